/** An assessment as the command line prints it: exactly these names. Point ids carry `_` inside the name. Judges nothing. */

import type { Assessment, Because, Finding, JobDue, Opened } from "../core/assess/index.js";
import type { CommonTexts, SheetTexts } from "../core/sheet/run.js";
import type { Audience, Problem } from "../core/terms/index.js";
import { told } from "./told.js";

type Texts = SheetTexts | CommonTexts | undefined;

/** The whole answer of `assess FILE`. */
export function printed(
  a: Assessment,
  jobs: readonly JobDue[],
  problems: readonly Problem[],
  texts: readonly Texts[],
  who: Audience,
) {
  const says = (rule: string, fault: string | null): string => wordsFor(texts, rule, fault, who);
  return {
    engine: a.engine,
    findings: a.findings.map((f) => findingPrinted(f, says)),
    faults: a.faults.map(({ position: _, settle, ...f }) => ({
      ...f,
      says: says(f.rules[0] ?? "", f.fault),
      settle: settle.map(opened),
    })),
    gates: a.gates.map((g) => ({
      gate: g.gate,
      guards: g.guards,
      state: g.state,
      first: g.first.map(opened),
      missingSheets: g.missingSheets,
      trippedBy: g.trippedBy,
    })),
    cautions: a.cautions,
    jobs: jobs.map(({ job, place, grade, why, byWhen, faults, rank, includes }) => ({
      job,
      place,
      grade,
      why,
      byWhen,
      faults,
      rank,
      includes,
    })),
    settle: a.settle.map((s) => ({ ...opened(s), decides: s.decides, closer: s.closer })),
    open: a.open.map(opened),
    suggested: a.suggested.map(opened),
    coverage: Object.fromEntries(a.coverage.map(({ sheet, ...c }) => [sheet, c])),
    problems: problems.map((p) => ({ code: p.code, ...p.where, says: told({ ...p, where: {} }) })),
  };
}

function findingPrinted(f: Finding, says: (rule: string, fault: string | null) => string) {
  return {
    rule: f.rule,
    fault: f.fault,
    place: f.place,
    grade: f.grade,
    ...(f.effect === undefined ? {} : { effect: f.effect }),
    says: says(f.rule, f.fault),
    sure: f.sure,
    provisional: f.provisional,
    close: f.close,
    atLeast: f.atLeast,
    differ: f.differ,
    because: f.because.map(stepPrinted),
    jobs: f.jobs,
    cautions: f.cautions,
    opens: f.opens.map(opened),
  };
}

const pointId = (id: string): string => id.replaceAll("-", "_");
const opened = ({ point, place, because }: Opened) => ({ point: pointId(point), place, because });

function stepPrinted(step: Because) {
  if (step.kind === "reply" || step.kind === "earlier")
    return { ...step, key: { ...step.key, point: pointId(step.key.point) } };
  if (step.kind === "limit") return { ...step, of: pointId(step.of) };
  if (step.kind === "derived") return { ...step, from: step.from.map((k) => ({ ...k, point: pointId(k.point) })) };
  return step;
}

/** The rule's own words, else the fault's; an owner reads the owner's. */
function wordsFor(texts: readonly Texts[], rule: string, fault: string | null, who: Audience): string {
  for (const t of texts) {
    const own = t?.rules?.[rule] ?? (fault === null ? undefined : t?.faults?.[fault]);
    if (own !== undefined) return who === "owner" ? (own.owner ?? own.says) : own.says;
  }
  return "";
}
