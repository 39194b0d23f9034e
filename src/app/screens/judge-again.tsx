/** Judging a visit again: what it would be judged by, which findings change, and keeping it or taking it back. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { findingChanges, judgeBy, keepJudgedAgain, movedOn, setNow, type Taken } from "../state/judge-again.js";
import { changeLines, limitLinesOf, sheetLinesOf } from "../state/judge-again-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { type FrozenSet, textsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { Plain } from "./frame.js";
import { ChangeBands, SetBands } from "./judge-again-lines.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { useLoaded } from "./use-loaded.js";
import { useSheetsAtHand } from "./use-sheets.js";

const JudgedBefore = lazy(() => import("./judged-before.js").then((file) => file.JudgedBefore), Nothing);

/** What would be judged by, chosen where both have moved on, and what comes of it. */
function Proposal({ on, frozen, moved }: { readonly on: OnDesk; readonly frozen: FrozenSet; readonly moved: Taken }) {
  const app = useApp();
  const atHand = useSheetsAtHand();
  const [left, setLeft] = useState<Taken>({ limits: false, sheets: false });
  const [busy, setBusy] = useState(false);
  const taken: Taken = { limits: moved.limits && !left.limits, sheets: moved.sheets && !left.sheets };
  const key = JSON.stringify([taken, atHand.map(({ edition }) => edition), on.visit.ledger.log.size]);
  const proposed = useLoaded(async () => {
    const set = await setNow(app, frozen, on.car, atHand, taken);
    return { set, judged: await judgeBy(app, set, on.car, on.visit, on.desk.earlier.peek()) };
  }, `${key} ${on.car.ledger.log.size}`);
  const both = moved.limits && moved.sheets;
  const nothing = !taken.limits && !taken.sheets;
  const words = { on: t("app.on"), off: t("app.off") };
  return (
    <>
      {both && (
        <Band heading={t("again.take")}>
          <Switch
            id="again-limits"
            label={t("again.take.limits")}
            on={taken.limits}
            onChange={(is) => setLeft({ ...left, limits: !is })}
            words={words}
          />
          <Switch
            id="again-sheets"
            label={t("again.take.sheets")}
            on={taken.sheets}
            onChange={(is) => setLeft({ ...left, sheets: !is })}
            words={words}
          />
        </Band>
      )}
      {!proposed && <p class="remark">{t("again.reading")}</p>}
      {proposed && !proposed.judged.ok && (
        <Notice kind="error" title={proposed.judged.problems.map(problemText).join(" ")} />
      )}
      {proposed?.judged.ok && (
        <>
          <SetBands
            limits={limitLinesOf(on.known, frozen, proposed.set)}
            sheets={sheetLinesOf(frozen, proposed.set, (file) => textsOf(file).title)}
          />
          <ChangeBands
            lines={changeLines(on.known, on.who, findingChanges(on.assessment, proposed.judged.value.assessment))}
          />
          <div class="acts">
            <NextAction
              words={t("again.keep")}
              disabled={busy || nothing}
              onPress={() => {
                if (!proposed.judged.ok) return;
                const { assessment: after, engine } = proposed.judged.value;
                setBusy(true);
                void keepJudgedAgain(app, on.stream, proposed.set, { before: on.assessment, after, engine }).then(() =>
                  setBusy(false),
                );
              }}
            />
          </div>
        </>
      )}
    </>
  );
}

function JudgeAgainBody({ on }: { readonly on: OnDesk }) {
  const { shelf } = useApp();
  const atHand = useSheetsAtHand();
  const frozen = on.desk.laid.value?.frozen;
  if (!frozen) return <OpeningScreen />;
  const moved = movedOn(frozen, on.car, shelf.common.edition, atHand);
  const any = moved.limits || moved.sheets;
  return (
    <Plain
      back={t("visit.title")}
      href={to("visit", { visit: on.param })}
      title={t("again.title")}
      second={t("again.says")}
    >
      {on.visit.closed && <Notice kind="plain" title={t("again.closed")} />}
      {any ? (
        <Proposal on={on} frozen={frozen} moved={moved} />
      ) : (
        <EmptyState title={t("again.same")} says={t("again.same.says")} />
      )}
      <JudgedBefore on={on} />
    </Plain>
  );
}

export const JudgeAgain = ({ params }: { readonly params: ParamsOf<"judge-again"> }) => (
  <OnVisit param={params.visit}>{(on) => <JudgeAgainBody on={on} />}</OnVisit>
);
