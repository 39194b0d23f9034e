/**
 * Looking through the camera: several shots in a row, each into the line at once, with the phone's own camera and the
 * album beside it. Where there is no viewfinder it says why and what to do.
 */
import { useRef, useState } from "preact/hooks";
import { draftAfter } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { UnitSwitch } from "../parts/switch.js";
import { ThumbZone } from "../parts/thumb-zone.js";
import { useApp } from "../state/app.js";
import { aimSays, aimTitle, backFrom } from "../state/camera-view.js";
import { earlierOf, lastReadable } from "../state/earlier-pictures.js";
import { pictureLineOf } from "../state/picture-line.js";
import { aimText, type CameraAim, cameraHref, pinsFor, readAim, sameSpot, spotOf } from "../state/picture-spot.js";
import { type ParamsOf, to } from "../state/routes.js";
import { t } from "../texts/media.js";
import { MissingScreen, Plain } from "./frame.js";
import { Ghost, GhostChoice, type GhostLook } from "./ghost.js";
import { pictureHref, Thumbs } from "./kept-picture.js";
import { LineProgress } from "./line-progress.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { usePicking } from "./use-picking.js";
import { type Looking, useCameraDraft, useViewfinder } from "./use-viewfinder.js";

/** One short tick for a shot. */
const TICK = [12];
/** Of what is kept here already, the last ones. */
const LAST_SHOWN = 8;

function NoViewfinder({ looking, again }: { readonly looking: Looking; readonly again: () => void }) {
  if (looking.is === "open") return null;
  if (looking.is === "opening")
    return (
      <p class="remark" role="status">
        {t("camera.opening")}
      </p>
    );
  const { why } = looking;
  const action = why === "not-offered" ? undefined : { words: t("app.again"), onPress: again };
  return (
    <Notice kind="plain" title={t(`camera.${why}`)} says={t(`camera.${why}.says`)} {...(action ? { action } : {})} />
  );
}

/** Which of the things here a picture belongs to. */
function Belongs({ on, aim }: { readonly on: OnDesk; readonly aim: CameraAim }) {
  const { router } = useApp();
  const pins = pinsFor(aim.from);
  if (pins.length < 2) return null;
  return (
    <div class="form">
      <p class="label">{t("camera.belongs")}</p>
      <UnitSwitch
        label={t("camera.belongs")}
        choices={pins.map((id) => ({ id, words: t(`camera.pin.${id}`) }))}
        chosen={aim.pin}
        onChoose={(id) => {
          const pin = pins.find((one) => one === id);
          if (pin) router.swap(cameraHref(on.param, aim.from, pin));
        }}
      />
    </div>
  );
}

/** Only what is durable: a picture seen here survives whatever ends the app. */
function KeptHere({ on, aim }: { readonly on: OnDesk; readonly aim: CameraAim }) {
  const { journal } = useApp();
  const spot = spotOf(aim);
  const opened = journal.keptVisit(on.stream).value;
  const kept = (opened.is === "open" ? opened.state.pictures : []).filter(({ value }) => sameSpot(value, spot));
  const last = kept.slice(-LAST_SHOWN).reverse();
  const shown = last.map(({ id, value }) => ({ id, ...(value.thumb ? { thumb: value.thumb } : {}) }));
  if (kept.length === 0) return null;
  return (
    <>
      <p class="remark">
        <a class="plain-link" href={to("pictures", { visit: on.param })}>
          {t("camera.here", { n: kept.length })}
        </a>
      </p>
      <Thumbs
        pictures={shown}
        one={({ id }) => ({ alt: aimTitle(on.known, on.who, aim), href: pictureHref(on.param, id) })}
      />
    </>
  );
}

function CameraBody({ on, aim }: { readonly on: OnDesk; readonly aim: CameraAim }) {
  const app = useApp();
  const href = to("camera", { visit: on.param, aim: aimText(aim) });
  const spot = spotOf(aim);
  const line = pictureLineOf(app);
  const screen = useRef<HTMLVideoElement>(null);
  const draft = useCameraDraft(href);
  const { looking, again } = useViewfinder(screen, draft.isWritten);
  const [lit, setLit] = useState(false);
  const [look, setLook] = useState<GhostLook>("faint");
  const last = lastReadable(earlierOf(on.desk.earlier.value, spot));
  const pick = usePicking(on.stream, spot, href);
  const start = (camera: boolean): void => {
    pick(camera).then((came) => came > 0 && draft.letGo(), reportError);
  };
  const shoot = async (): Promise<void> => {
    if (looking.is !== "open") return;
    const shot = await looking.viewfinder.shoot().catch(() => undefined);
    if (!shot) return again();
    app.around.vibrate(TICK);
    const after = look === "off" ? undefined : last?.id;
    line.add(
      on.stream,
      [shot],
      spot,
      after === undefined ? undefined : (act, visit, blob) => [draftAfter(act, visit, blob, after)],
    );
  };
  const viewfinder = looking.is === "open" ? looking.viewfinder : undefined;
  const { torch } = viewfinder ?? {};
  const back = backFrom(on.telling, aim);
  const others = [
    { words: t("camera.phone"), onPress: () => start(true) },
    { words: t("camera.album"), onPress: () => start(false) },
  ];
  return (
    <>
      <Plain back={back.words} href={back.href} title={aimTitle(on.known, on.who, aim)} second={aimSays(on.known, aim)}>
        {draft.left && (
          <Notice
            kind="plain"
            title={t("camera.left")}
            says={t("camera.left.says")}
            action={{ words: t("camera.let-go"), onPress: draft.letGo }}
          />
        )}
        <NoViewfinder looking={looking} again={again} />
        <div class="finder">
          <video
            ref={screen}
            class={viewfinder ? "whole-picture" : undefined}
            hidden={!viewfinder}
            aria-label={t("camera.title")}
            playsInline
            muted
            autoplay
          />
          {viewfinder && last && <Ghost before={last} look={look} />}
        </div>
        {viewfinder && last && <GhostChoice before={last} look={look} onLook={setLook} />}
        <LineProgress line={line} />
        <KeptHere on={on} aim={aim} />
        <Belongs on={on} aim={aim} />
        <div class="acts">
          {others.map((one, index) =>
            index === 0 && looking.is === "none" ? (
              <NextAction key={one.words} {...one} />
            ) : (
              <Tool key={one.words} {...one} />
            ),
          )}
        </div>
      </Plain>
      {viewfinder && (
        <ThumbZone
          label={t("camera.title")}
          tools={
            torch
              ? [
                  {
                    id: "torch",
                    words: lit ? t("camera.torch.out") : t("camera.torch"),
                    onPress: () => void torch(!lit).then(setLit),
                  },
                ]
              : []
          }
          next={{ words: t("camera.take"), onPress: () => void shoot() }}
        />
      )}
    </>
  );
}

function CameraOrNot({ on, aim }: { readonly on: OnDesk; readonly aim: CameraAim | undefined }) {
  if (!aim) return <MissingScreen />;
  if (!on.visit.closed) return <CameraBody on={on} aim={aim} />;
  const back = backFrom(on.telling, aim);
  return (
    <Plain back={back.words} href={back.href} title={t("camera.title")}>
      <Notice kind="plain" title={t("camera.closed")} />
    </Plain>
  );
}

export const CameraScreen = ({ params }: { readonly params: ParamsOf<"camera"> }) => (
  <OnVisit param={params.visit} unjudged={() => true}>
    {(on) => <CameraOrNot on={on} aim={readAim(params.aim)} />}
  </OnVisit>
);
