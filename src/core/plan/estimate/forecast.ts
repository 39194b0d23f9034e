/**
 * The first estimate, kept as it was told, and where the work stands against it now: what was agreed, what it is
 * forecast to come to, and how far over that is. Never changes what was told first. Knows no law on overruns: the two
 * marks are common practice, no source.
 */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { roundedQuotient } from "../../units/index.js";
import type { IsoDate } from "../terms.js";
import type { Amounts, Column } from "./amounts.js";
import { isDay, MOST_MONEY } from "./checks.js";
import type { Estimate, EstimateLine } from "./estimate.js";

/** What is kept of the first estimate: plain data, with the figure that the owner was told. */
export interface FirstEstimate {
  readonly kind: "first-estimate/1";
  readonly at: IsoDate;
  /** Which column the owner was told. */
  readonly told: Column;
  readonly currency: string;
  readonly minorDigits: number;
  readonly lines: readonly Pick<EstimateLine, "id" | "kind" | "net" | "minutes">[];
  readonly net: Amounts;
  readonly gross: Amounts;
  readonly deposits: number;
  /** What it never held: it was too low by these. */
  readonly setAside: readonly string[];
}

/** The estimate as it stands, frozen on a day. Nothing in it is shared with what goes on changing. */
export function freezeEstimate(of: Estimate, at: IsoDate, told: Column = "p80"): Result<FirstEstimate> {
  if (!isDay(at)) return fail(problem("estimate.day", { path: "at" }, { found: at }));
  const { currency, minorDigits, net, gross, deposits, setAside } = of;
  const lines = of.lines.map(({ id, kind, net: of, minutes }) => ({
    id,
    kind,
    net: { ...of },
    ...(minutes === undefined ? {} : { minutes: { ...minutes } }),
  }));
  return ok({
    kind: "first-estimate/1",
    at,
    told,
    currency,
    minorDigits,
    lines,
    net: { ...net },
    gross: { ...gross },
    deposits,
    setAside: [...setAside],
  });
}

/**
 * Work that came on top, or, below zero, that was left out; with tax, in minor units. Where minutes and a price are
 * known, an estimate of them alone says what it comes to.
 */
export interface Addition {
  readonly id: string;
  readonly gross: number;
  /** Who said yes to it, and when; missing or null: nobody has. */
  readonly agreed?: { readonly who: string; readonly on: IsoDate } | null;
}

/** `over-10`: a tenth or more over what is agreed; `over-20`: a fifth or more. */
export type OverMark = "within" | "over-10" | "over-20";

export interface Forecast {
  readonly currency: string;
  /** What the owner was told first. */
  readonly first: number;
  readonly agreedAdditions: number;
  /** First and agreed additions. */
  readonly agreed: number;
  /** What all that is agreed comes to, as it looks now. */
  readonly present: number;
  /** Nobody has agreed to these. */
  readonly notAgreed: readonly Addition[];
  readonly notAgreedSum: number;
  /** Present and what nobody has agreed to. */
  readonly forecast: number;
  /** Forecast less agreed; below zero: under. */
  readonly over: number;
  /** Of what is agreed, in hundredths of a per cent; null where nothing was agreed. */
  readonly overBasisPoints: number | null;
  readonly mark: OverMark;
  readonly remarks: readonly Problem[];
}

/**
 * Where the work stands. `now` is the present estimate of all that is agreed, first and added; what nobody agreed to
 * comes on top of the forecast and never of what is agreed.
 */
export function forecast(
  first: FirstEstimate,
  now: Pick<Estimate, "currency" | "gross" | "setAside">,
  additions: readonly Addition[],
): Result<Forecast> {
  const problems = additions.flatMap(({ id, gross }, i) =>
    Number.isSafeInteger(gross) && Math.abs(gross) <= MOST_MONEY
      ? []
      : [problem("forecast.addition", { path: `additions[${i}].gross` }, { id, found: `${gross}`, most: MOST_MONEY })],
  );
  if (now.currency !== first.currency)
    return fail(problem("forecast.currency", {}, { first: first.currency, now: now.currency }), ...problems);
  if (problems.length > 0) return fail(...problems);
  const sum = (all: readonly Addition[]) => all.reduce((total, { gross }) => total + gross, 0);
  const notAgreed = additions.filter((one) => !isAgreed(one));
  const agreedAdditions = sum(additions.filter(isAgreed));
  const told = first.gross[first.told];
  const agreed = told + agreedAdditions;
  const present = now.gross[first.told];
  const notAgreedSum = sum(notAgreed);
  const whole = present + notAgreedSum;
  const over = whole - agreed;
  const aside = [...new Set([...first.setAside, ...now.setAside])];
  return ok({
    currency: first.currency,
    first: told,
    agreedAdditions,
    agreed,
    present,
    notAgreed,
    notAgreedSum,
    forecast: whole,
    over,
    overBasisPoints: agreed > 0 ? Number(roundedQuotient(BigInt(over) * 10_000n, BigInt(agreed))) : null,
    mark: markOf(BigInt(over), BigInt(agreed)),
    remarks: aside.length === 0 ? [] : [problem("forecast.set-aside", {}, { ids: aside })],
  });
}

/** Somebody with a name said yes on a day; anything less is no agreement. */
const isAgreed = ({ agreed }: Addition): boolean =>
  agreed !== undefined && agreed !== null && agreed.who.trim() !== "" && isDay(agreed.on);

/** In whole numbers: no rounding lies between a figure and its mark. Over nothing agreed, everything is over. */
function markOf(over: bigint, agreed: bigint): OverMark {
  if (over <= 0n) return "within";
  if (over * 5n >= agreed) return "over-20";
  return over * 10n >= agreed ? "over-10" : "within";
}
