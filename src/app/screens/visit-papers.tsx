/** Papers of a visit and its plan chosen one by one and deleted for good: pictures, sounds, notes, everybody's words. */
import { useState } from "preact/hooks";
import type { VisitState } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import type { Paper } from "../state/papers-view.js";
import { papersOfVisit } from "../state/plan-papers.js";
import { t } from "../texts/files.js";
import { type ErasedNow, ErasedTold, Erasing } from "./erasing.js";
import { Thumbs } from "./kept-picture.js";

interface Choosing {
  readonly papers: readonly Paper[];
  readonly chosen: ReadonlySet<string>;
  readonly turn: (key: string) => void;
}

function Pictures({ papers, chosen, turn }: Choosing) {
  const pictures = papers.filter(({ is }) => is === "picture");
  if (pictures.length === 0) return null;
  const hidden = pictures.filter((one) => one.hidden).length;
  return (
    <>
      <h3 class="remark row-title">{t("erase.pictures")}</h3>
      <div class="form">
        <Thumbs
          pictures={pictures.map(({ key, thumb }) => ({ id: key, ...(thumb === undefined ? {} : { thumb }) }))}
          one={({ id }, index) => ({
            alt: t("erase.picture", { n: index + 1 }),
            chosen: chosen.has(id),
            onPress: () => turn(id),
          })}
        />
      </div>
      {hidden > 0 && <p class="remark">{t("erase.taken-back", { n: hidden })}</p>}
    </>
  );
}

function Others({ papers, chosen, turn }: Choosing) {
  const words = { on: t("erase.on"), off: t("erase.off") };
  let sounds = 0;
  return (
    <>
      {papers
        .filter(({ is }) => is !== "picture")
        .map(({ key, is, words: said, hidden }) => {
          const label = is === "sound" || is === "picture" ? t("erase.sound", { n: ++sounds }) : t(`erase.${is}`);
          const says = [said, hidden ? t("erase.hidden") : ""].filter((one) => one !== "").join(". ");
          return (
            <Switch
              key={key}
              id={`paper-${key}`}
              label={label}
              {...(says === "" ? {} : { says })}
              on={chosen.has(key)}
              onChange={() => turn(key)}
              words={words}
            />
          );
        })}
    </>
  );
}

/** Without these nobody has decided, answered or taken the car. */
const UNDECIDES: ReadonlySet<Paper["is"]> = new Set(["decision", "answer", "release", "second-look", "recheck"]);

export function VisitPapers({ visit }: { readonly visit: VisitState }) {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [asking, setAsking] = useState(false);
  const [erased, setErased] = useState<ErasedNow>();
  const plan = useApp().journal.plan(visit.stream).value;
  const papers = papersOfVisit(visit, plan.is === "open" ? plan.state : undefined);
  const going = papers.filter(({ key }) => chosen.has(key));
  const turn = (key: string): void =>
    setChosen((before) => new Set(before.has(key) ? [...before].filter((one) => one !== key) : [...before, key]));
  // What can't be read here may be something to be warned of: it goes only where it is chosen by itself.
  const usual = papers.filter(({ is }) => is !== "unread");
  const isAll = usual.length > 0 && usual.every(({ key }) => chosen.has(key));
  const all = (): void => setChosen(new Set(isAll ? [] : usual.map(({ key }) => key)));
  const what = {
    title: t("erase.sure.papers", { n: going.length }),
    ...(going.some(({ is }) => UNDECIDES.has(is)) ? { says: t("erase.sure.undecides") } : {}),
    ids: going.flatMap(({ ids }) => ids),
  };
  const done = (now: ErasedNow): void => {
    setErased(now);
    setAsking(false);
    setChosen(new Set());
  };
  return (
    <Band heading={t("erase.papers")}>
      {plan.is === "opening" || (
        <p class="remark">{papers.length === 0 ? t("erase.papers.none") : t("erase.papers.says")}</p>
      )}
      {plan.is === "trouble" && <Notice kind="error" title={t("erase.papers.no-plan")} />}
      {erased && <ErasedTold erased={erased} />}
      <Pictures papers={papers} chosen={chosen} turn={turn} />
      <Others papers={papers} chosen={chosen} turn={turn} />
      {papers.length > 0 && plan.is !== "opening" && (
        <div class="acts">
          <Tool words={isAll ? t("erase.none") : t("erase.all")} onPress={all} />
          <Tool
            words={t("erase.chosen", { n: going.length })}
            disabled={going.length === 0}
            onPress={() => setAsking(true)}
          />
        </div>
      )}
      {asking && <Erasing what={what} onClose={() => setAsking(false)} onErased={done} />}
    </Band>
  );
}
