/** All parts of a plan grouped by what is to be done about them next. Pure. */
import type { PartOrder, WorkPlan } from "../../core/plan/index.js";
import { t } from "../texts/plan-parts.js";
import { beatsWords, byWhen } from "./order-words.js";
import { standsWords } from "./part-way.js";
import { type PartsKnown, type PlannedPart, plannedParts, refusedAlone } from "./plan-part-view.js";

const GROUPS = ["overdue", "order", "send-back", "check", "coming", "in-hand"] as const;
export type PartGroupId = (typeof GROUPS)[number];

export interface PartLine {
  readonly id: string;
  readonly title: string;
  readonly second: string;
  readonly aside?: string;
  readonly href: string;
}

export interface PartGroup {
  readonly id: PartGroupId;
  readonly heading: string;
  readonly lines: readonly PartLine[];
}

function groupOf({ stands }: PlannedPart): PartGroupId {
  switch (stands?.stands) {
    case "ordered":
      // Without a day promised or a day to ask, somebody has to ask.
      return stands.overdueDays !== undefined || stands.next === undefined ? "overdue" : "coming";
    case "promised":
      return stands.overdueDays === undefined ? "coming" : "overdue";
    case "arrived":
      return "check";
    case "failed":
      return "send-back";
    case "passed":
    case "fitted":
      return "in-hand";
    default:
      return "order";
  }
}

/** Groups with something in them. Jobs the plan leaves for later order nothing; without a plan every job counts. */
export function partGroups(known: PartsKnown, plan: WorkPlan | undefined): readonly PartGroup[] {
  const wanted = plan && new Set([...plan.chosen, ...plan.setAside]);
  const orders = new Map((plan?.schedule?.orders ?? []).map((order) => [order.part, order]));
  const parts = plannedParts(known).filter(
    // What was ordered is followed whatever the plan says by now.
    (part) => part.stands !== undefined || wanted === undefined || wanted.has(part.jobId),
  );
  return GROUPS.flatMap((id) => {
    const lines = parts
      .filter((part) => groupOf(part) === id)
      .map((part) => ({ part, order: id === "order" ? orders.get(part.id) : undefined }))
      .sort((a, b) => byOrder(a.order, b.order))
      .map(({ part, order }) => lineOf(known, part, id, order));
    return lines.length === 0 ? [] : [{ id, heading: t(`all-parts.${id}`), lines }];
  });
}

/** Late ones first, then by the day; those without a day last. */
const byOrder = (a: PartOrder | undefined, b: PartOrder | undefined): number =>
  Number(b?.late ?? false) - Number(a?.late ?? false) || (keyOf(a) < keyOf(b) ? -1 : keyOf(a) > keyOf(b) ? 1 : 0);
const keyOf = (order: PartOrder | undefined): string => order?.orderBy ?? "~";

function lineOf(known: PartsKnown, part: PlannedPart, group: PartGroupId, order: PartOrder | undefined): PartLine {
  const { id, title, href, jobTitle } = part;
  const says = group === "order" ? orderWords(known, part, order) : [standsWords(part.stands)];
  return {
    id,
    title,
    second: [jobTitle, ...says].join(" · "),
    ...(order?.late ? { aside: t("all-parts.late") } : {}),
    href,
  };
}

function orderWords(known: PartsKnown, part: PlannedPart, order: PartOrder | undefined): readonly string[] {
  const [refused] = refusedAlone(known, [part]);
  return [
    order ? byWhen(order) : t("all-parts.no-date"),
    ...beatsWords(part, known.input.today),
    ...(refused ? [t("all-parts.alone", { counterpart: refused.counterparts.join(", ") })] : []),
  ];
}
