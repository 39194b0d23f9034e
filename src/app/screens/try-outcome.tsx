/** What comes out of sample replies: rules that fire with their because, what one reply more would decide, gates, work. */
import type { Finding, Session } from "../../core/assess/index.js";
import { Tool } from "../parts/button.js";
import { FindingRow } from "../parts/finding-row.js";
import { ListRow } from "../parts/list-row.js";
import { Band, Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { stepOf } from "../state/because.js";
import { atPlace, becauseSays, faultSays, type Knowledge, pointName, ruleSays } from "../state/knowledge.js";
import { to } from "../state/routes.js";
import { caseOf, freshNumber, type Said, type SaidFacts, type Trial } from "../state/sheet-trying.js";
import type { SheetWork } from "../state/sheet-work.js";
import { putItem } from "../state/sheet-work-acts.js";
import { t as shared } from "../texts/index.js";
import { t } from "../texts/sheet-rules.js";

interface OutcomeProps {
  readonly trial: Trial;
  readonly work: SheetWork;
  readonly session: Session;
  readonly said: Said;
  readonly facts: SaidFacts;
}
/** So many points that would decide something are named. */
const SETTLE_SHOWN = 8;

export function TryOutcome({ trial, work, session, said, facts }: OutcomeProps) {
  const { known } = trial;
  const { findings, settle, gates, faults } = session.assessment;
  const own = new Set(work.sheet.rules.map(({ id }) => id));
  const fired = findings.filter(({ rule }) => own.has(rule));
  const shut = gates.filter(({ state }) => state === "tripped");
  const jobs = [...new Set(faults.flatMap((fault) => fault.jobs))];
  return (
    <>
      <Pool as="section" label={t("try.fires")} bare>
        <div role="status">
          <p class="remark">{t("try.count", { n: fired.length })}</p>
        </div>
        {fired.map((finding) => (
          <Fired key={`${finding.rule} ${finding.place}`} {...{ known, work, session, said, facts, finding }} />
        ))}
      </Pool>
      {settle.length > 0 && (
        <Band heading={t("try.settle")}>
          {settle.slice(0, SETTLE_SHOWN).map(({ point, place, decides }) => (
            <ListRow
              key={`${point} ${place}`}
              title={`${pointName(known, point)}${atPlace(known, place)}`}
              second={t("try.decides", {
                rules: [...new Set(decides.map((rule) => becauseSays(known, rule, "technician")))].join("; "),
              })}
            />
          ))}
        </Band>
      )}
      {shut.length > 0 && (
        <Band heading={t("try.gates")}>
          {shut.map(({ gate }) => (
            <ListRow key={gate} title={known.words.gates[gate]?.tripped ?? becauseSays(known, gate, "technician")} />
          ))}
        </Band>
      )}
      {jobs.length > 0 && (
        <Band heading={t("try.jobs")}>
          {jobs.map((job) => (
            <ListRow key={job} title={known.jobs.get(job)?.texts.jobs[job]?.name ?? job} />
          ))}
        </Band>
      )}
    </>
  );
}

function titleOf(known: Knowledge, { fault, rule }: Finding): string {
  return fault === null ? ruleSays(known, rule, "technician") : faultSays(known, fault, [rule], "technician").says;
}

function Fired({
  known,
  work,
  session,
  said,
  facts,
  finding,
}: Omit<OutcomeProps, "trial"> & { readonly known: Knowledge; readonly finding: Finding }) {
  const { journal, router } = useApp();
  const { grade, place, sure } = finding;
  const telling = { known, who: "technician", visit: "", car: "", pictures: [] } as const;
  const rule = work.sheet.rules.find(({ id }) => id === finding.rule);
  const makeCase = (): void => {
    if (!rule) return;
    const item = freshNumber(work, "cases");
    const value = caseOf(rule, session, said, facts);
    const hence = router.fromHere();
    void putItem(journal, work.draft, "cases", item, { value, texts: {} }).then(
      (kept) => kept && hence.go(to("sheet-item", { sheet: work.sheet.id, list: "cases", item })),
    );
  };
  return (
    <FindingRow
      open
      mark={grade ?? "not-looked"}
      markWord={grade === null ? t("try.effect") : shared(`grade.${grade}`)}
      title={titleOf(known, finding)}
      second={`${shared(`sure.${sure}`)}${atPlace(known, place)}`}
    >
      <ul class="reading">
        {finding.because.map((because, index) => (
          <li key={index}>{stepOf(telling, because, { place }, String(index)).says}</li>
        ))}
      </ul>
      <div class="acts">
        <Tool words={t("try.make-case")} onPress={makeCase} />
        <Tool
          words={t("try.to-rule")}
          href={to("sheet-item", { sheet: work.sheet.id, list: "rules", item: finding.rule })}
        />
      </div>
    </FindingRow>
  );
}
