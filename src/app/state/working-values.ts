/** The values inside a formula, asked of a visit once more: what a derived value is, rests on, and lacks. Writes no word. */
import type { World } from "../../core/assess/world.js";
import type { link, Plan, PlanNode, Trade } from "../../core/expr/run.js";
import type { BuiltSheet } from "../../core/sheet/run.js";
import type { Problem } from "../../core/terms/index.js";
import type { TradeFunction } from "../../core/trade/index.js";
import { canonicalUnit, convertStep, fromCanonical, isQuantity } from "../../core/units/index.js";
import type { Knowledge } from "./knowledge.js";

/** U = 2u, as readings are judged. */
const COVERAGE = 2;

export interface Question {
  readonly world: World;
  readonly link: typeof link;
  readonly sheets: readonly BuiltSheet[];
  readonly known: Knowledge;
  readonly functions: Readonly<Record<string, TradeFunction>>;
  readonly trade: Trade;
  readonly tellTrade: (problem: Problem) => string;
}

/** A derived value as it stands. */
export interface Derived {
  readonly place: string;
  readonly unit: string;
  /** Undefined where it is not known. */
  readonly measured: { readonly value: number; readonly uncertainty: number } | undefined;
  /** Why it could not be worked out; empty where it is known or only waits for a reply. */
  readonly problems: readonly Problem[];
  /** Several replies stand somewhere under it: then its numbers are not told apart here. */
  readonly differ: boolean;
  readonly from: readonly { readonly point: string; readonly place: string }[];
  readonly plan: Plan | undefined;
  /** Of a preference: the one taken. */
  readonly used: string | undefined;
}

/** One derived value at one place; undefined where no open sheet has it there. */
export function asked({ world, sheets }: Question, id: string, place: string): Derived | undefined {
  const info = world.site.model.refOf({ point: id, field: "" });
  const node = info.is === "derived" ? world.site.derivedAt(info, place) : undefined;
  if (info.is !== "derived" || node === undefined) return undefined;
  const outcome = world.measuredOf(info, place);
  const kept = world.keptOf(node.id);
  const slots = world.slotsUnder(kept?.reads ?? []);
  const { unit, quantity } = info.derived.derived;
  const measured =
    !("value" in outcome) || !isQuantity(quantity)
      ? undefined
      : {
          value: fromCanonical(outcome.value, unit, quantity),
          uncertainty: convertStep(COVERAGE * outcome.u, canonicalUnit(quantity), unit, quantity),
        };
  return {
    place: node.place,
    unit,
    measured,
    problems: measured ? [] : (kept?.problems ?? []),
    differ: slots.some((slot) => (world.given.replies[slot]?.length ?? 0) > 1),
    from: slots.flatMap((slot) => {
      const of = world.site.nodes[slot];
      return of?.kind === "slot" ? [{ point: of.spot.point.id, place: of.spot.place }] : [];
    }),
    plan: sheets.map((one) => one.plans[`derived/${id}/formula`]).find((plan) => plan !== undefined),
    used: usedOf(kept?.value),
  };
}

const usedOf = (value: unknown): string | undefined =>
  typeof value === "object" && value !== null && "used" in value && typeof value.used === "string"
    ? value.used
    : undefined;

/** What a part of a formula comes to at a place; undefined where it is no figure, word or yes. */
export function comesTo(
  { world, link, trade }: Question,
  { plan, place }: Pick<Derived, "plan" | "place">,
  code: PlanNode,
): number | string | boolean | undefined {
  if (plan === undefined) return undefined;
  const run = link({ v: plan.v, gives: "number", code, spans: [] }, trade);
  const value = run.ok ? run.value(world, place) : undefined;
  return typeof value === "object" ? undefined : value;
}
