/** A sheet under work tried at once: sample replies above, below what comes out of them and what does not, and why. */
import { useMemo, useState } from "preact/hooks";
import { reassess, type Session } from "../../core/assess/index.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { type ParamsOf, to } from "../state/routes.js";
import {
  canBeTried,
  inputFor,
  keyOfSheet,
  type Said,
  type SaidFacts,
  type Trial,
  trialOf,
  tried,
} from "../state/sheet-trying.js";
import type { SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-rules.js";
import { Plain } from "./frame.js";
import { OnSheetWork } from "./on-sheet-work.js";
import { TryOutcome } from "./try-outcome.js";
import { TryFacts, TryReplies } from "./try-replies.js";
import { WhyNotBand } from "./try-why-not.js";
import { useLoaded } from "./use-loaded.js";

const NOTHING: { readonly said: Said; readonly facts: SaidFacts } = { said: {}, facts: {} };

function Tried({ work, trial }: { readonly work: SheetWork; readonly trial: Trial }) {
  const [now, setNow] = useState(tried.get(work.draft) ?? NOTHING);
  const put = (part: Partial<typeof now>): void => {
    const next = { ...now, ...part };
    tried.set(work.draft, next);
    setNow(next);
  };
  const session = useMemo((): Session => {
    const input = inputFor(trial, now.said, now.facts);
    return input ? reassess(trial.untouched, input) : trial.untouched;
  }, [trial, now]);
  return (
    <>
      <TryReplies trial={trial} work={work} said={now.said} onSay={(said) => put({ said })} />
      <TryFacts trial={trial} facts={now.facts} onFacts={(facts) => put({ facts })} />
      <TryOutcome {...{ trial, work, session }} said={now.said} facts={now.facts} />
      <WhyNotBand {...{ trial, work, session }} />
    </>
  );
}

function Ready({ work }: { readonly work: SheetWork }) {
  const { sheetTools } = useApp();
  const made = useLoaded(async () => (await sheetTools()).engineOf(work), keyOfSheet(work));
  const trial = useMemo(() => made && trialOf(work, made), [made, work.sheet]);
  if (!trial) return <p class="remark">{t("app.opening")}</p>;
  return <Tried work={work} trial={trial} />;
}

function Trying({ work, sheet }: { readonly work: SheetWork; readonly sheet: string }) {
  const { checked } = work;
  return (
    <Plain back={t("try.back")} href={to("sheet-work", { sheet })} title={t("try.title")}>
      <p class="remark">{t("try.says")}</p>
      {canBeTried(work) ? (
        <Ready work={work} />
      ) : (
        <Band>
          <Notice kind="plain" title={t(checked === "yet" ? "try.checking" : "try.not-yet")} />
        </Band>
      )}
    </Plain>
  );
}

export const SheetTry = ({ params: { sheet } }: { readonly params: ParamsOf<"sheet-try"> }) => (
  <OnSheetWork sheet={sheet}>{(work) => <Trying work={work} sheet={sheet} />}</OnSheetWork>
);
