/** Recording what is heard at a point: whom to ask first, told once; recording; what is kept here already. */
import { useEffect, useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { undo } from "../state/reply-acts.js";
import type { PointAt } from "../state/standing.js";
import { t } from "../texts/media.js";
import type { OnDesk } from "./on-visit.js";
import { Sounds } from "./sounds.js";
import { useRecording } from "./use-recording.js";

const TOLD = "leadlamp.sound-told";

interface SoundSheetProps {
  readonly on: OnDesk;
  readonly at: PointAt;
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Whole seconds since it began. */
function useSeconds(since: number | undefined): number {
  const { around } = useApp();
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    if (since === undefined) return;
    const tell = (): void => setSeconds(Math.floor((around.steadyMs() - since) / 1000));
    tell();
    const timer = setInterval(tell, 250);
    return () => clearInterval(timer);
  }, [since, around]);
  return seconds;
}

function Recorder({ on, at }: { readonly on: OnDesk; readonly at: PointAt }) {
  const { now, start, keep, throwAway } = useRecording(on.stream, at);
  const seconds = useSeconds(now.is === "recording" ? now.since : undefined);
  if (now.is === "recording")
    return (
      <>
        <p class="remark" role="timer">
          {t("sound.recording", { n: seconds })}
        </p>
        <div class="acts">
          <NextAction words={t("sound.keep")} onPress={keep} />
          <Tool words={t("sound.throw-away")} onPress={throwAway} />
        </div>
      </>
    );
  return (
    <>
      {now.is === "none" && <Notice kind="plain" title={t(`sound.${now.why}`)} says={t(`sound.${now.why}.says`)} />}
      <div class="acts">
        <NextAction
          words={now.is === "none" ? t("app.again") : t("sound.record")}
          onPress={start}
          disabled={now.is === "opening" || now.is === "keeping"}
        />
      </div>
    </>
  );
}

export function SoundSheet({ on, at, open, onClose }: SoundSheetProps) {
  const { remembered, journal } = useApp();
  const [told, setTold] = useState(() => remembered.get(TOLD) !== null);
  const last = on.visit.sounds.findLast(
    ({ value }) => value.point === at.point && value.place === at.place && value.state === at.state,
  );
  const agree = (): void => {
    remembered.put(TOLD, "yes");
    setTold(true);
  };
  return (
    <Sheet open={open} title={t("sound.title")} closeWords={t("app.close")} onClose={onClose}>
      {told ? (
        <Recorder on={on} at={at} />
      ) : (
        <>
          <p class="remark">{t("sound.voices")}</p>
          <div class="acts">
            <NextAction words={t("sound.voices.told")} onPress={agree} />
          </div>
        </>
      )}
      <Sounds on={on} at={at} />
      {last && (
        <div class="acts">
          <Tool words={t("sound.take-back")} onPress={() => void undo(journal, on.stream, { ids: [last.id] })} />
        </div>
      )}
    </Sheet>
  );
}
