/**
 * What may be taken apart to look, how far it may go, what is spent of it, and what is left out. Pure; states of the
 * caps and every sum come from core/plan.
 */
import {
  type CapTold,
  type ScopeCap,
  type SpentSoFar,
  scopeCap,
  spentSoFar,
  type WorkInput,
} from "../../core/plan/index.js";
import type { PlanScope, PlanState } from "../../core/record/index.js";
import { t } from "../texts/plan-scope.js";
import type { Telling } from "./because.js";
import { capital, type Knowledge } from "./knowledge.js";
import { type Currency, moneyText } from "./money-words.js";
import { last } from "./plan-input.js";
import { minutesTold } from "./plan-spent.js";
import { idParts, minutesText, planName } from "./plan-words.js";

const NOTHING_SAID: PlanScope = { apart: [], leftOut: [] };

/** The scope as it stands; nothing may be opened and no limit is set until somebody says so. */
export const scopeOf = (said: PlanState): PlanScope => last(said.scope) ?? NOTHING_SAID;

/** Kinds of openings the plan asks for, wherever on the car. */
const opensOf = ({ openings }: WorkInput): ReadonlySet<string> => new Set(openings.map(({ id }) => idParts(id).what));

export interface ApartRow {
  readonly id: string;
  readonly title: string;
  readonly second?: string;
  readonly isChosen: boolean;
}

/** Everything that can be opened on a car, what the plan opens first. */
export function apartRows({ common, words }: Knowledge, input: WorkInput, scope: PlanScope): readonly ApartRow[] {
  const planned = opensOf(input);
  const name = (id: string): string => words.access[id] ?? id;
  const rows = common.access.map(({ id, needs }): ApartRow & { readonly isPlanned: boolean } => {
    const isPlanned = planned.has(id);
    const second = [
      ...(isPlanned ? [t("scope.apart.planned")] : []),
      ...(needs && needs.length > 0 ? [t("scope.apart.needs", { what: needs.map(name).join(", ") })] : []),
    ].join("; ");
    return {
      id,
      title: capital(name(id)),
      ...(second === "" ? {} : { second }),
      isChosen: scope.apart.includes(id),
      isPlanned,
    };
  });
  return [...rows.filter(({ isPlanned }) => isPlanned), ...rows.filter(({ isPlanned }) => !isPlanned)];
}

/** Chosen or not the other way round: what it needs open is chosen with it, and what needs it goes with it. */
export function apartAfter({ common }: Knowledge, { apart }: PlanScope, id: string): readonly string[] {
  const rows = new Map(common.access.map((row) => [row.id, row]));
  const isBehind = (one: string): boolean => one === id || (rows.get(one)?.needs ?? []).some(isBehind);
  if (apart.includes(id)) return apart.filter((one) => !isBehind(one));
  const all = new Set(apart);
  const add = (one: string): void => {
    if (all.has(one)) return;
    all.add(one);
    for (const need of rows.get(one)?.needs ?? []) add(need);
  };
  add(id);
  return [...all];
}

/** What the plan opens and nobody has agreed to; empty until anything is agreed. */
export function notAgreed({ words }: Knowledge, input: WorkInput, scope: PlanScope): readonly string[] {
  if (scope.apart.length === 0) return [];
  return [...opensOf(input)].filter((id) => !scope.apart.includes(id)).map((id) => capital(words.access[id] ?? id));
}

const CLOCK = /^(\d{1,3}):([0-5]\d)$/;
const HOURS = /^(\d{1,3})(?:[.,](\d{1,2}))?$/;
const MINUTES_AN_HOUR = 60;

/** `3:30`, `3.5` or `3` hours as whole minutes; undefined when it is none of them. */
export function typedHours(typed: string): number | undefined {
  const text = typed.trim();
  const clock = CLOCK.exec(text);
  if (clock) return Number(clock[1]) * MINUTES_AN_HOUR + Number(clock[2]);
  const hours = HOURS.exec(text);
  return hours ? Math.round(Number(`${hours[1]}.${hours[2] ?? 0}`) * MINUTES_AN_HOUR) : undefined;
}

export interface Spent {
  readonly cap: ScopeCap;
  readonly spent: SpentSoFar;
}

/**
 * Where the caps stand. What is known of the spending alone may reach a cap; where it does not and something is not
 * known, the whole is not known.
 */
export function spentOf(input: WorkInput, said: PlanState): Spent {
  const { capMinutes, capMinor } = scopeOf(said);
  const spent = spentSoFar(input, minutesTold(said));
  const known = (cap: number, figure: number | undefined, isWhole: boolean) =>
    figure !== undefined && (isWhole || figure >= cap) ? { cap, spent: figure } : { cap };
  const isTimed = spent.untimed.length === 0;
  const cap = scopeCap({
    ...(capMinutes === undefined ? {} : { minutes: known(capMinutes, spent.minutes, isTimed) }),
    ...(capMinor === undefined ? {} : { money: known(capMinor, spent.money, isTimed && spent.unpriced.length === 0) }),
  });
  return { cap, spent };
}

export interface SpentRow {
  readonly id: string;
  readonly title: string;
  readonly says: string;
}

/** Hours and money spent, each against its cap. */
export function spentRows({ cap, spent }: Spent, currency: Currency | undefined): readonly SpentRow[] {
  const of = (what: CapTold["what"]) => cap.caps.find((one) => one.what === what);
  const isTimed = spent.untimed.length === 0;
  const money = (minor: number): string => (currency ? moneyText(minor, currency) : String(minor));
  return [
    {
      id: "minutes",
      title: t("scope.spent.hours"),
      says: spentText(of("minutes"), spent.minutes, isTimed, minutesText),
    },
    {
      id: "money",
      title: t("scope.spent.money"),
      says:
        spent.money === undefined || !currency
          ? t("scope.spent.no-rates")
          : spentText(of("money"), spent.money, isTimed && spent.unpriced.length === 0, money),
    },
  ];
}

function spentText(
  told: CapTold | undefined,
  known: number,
  isWhole: boolean,
  write: (figure: number) => string,
): string {
  const spent = write(known);
  if (!told) return isWhole ? t("scope.spent.no-cap", { spent }) : t("scope.spent.at-least", { spent });
  const cap = write(told.cap);
  if (told.left === undefined) return t("scope.spent.unknown", { spent, cap });
  return told.left < 0
    ? t("scope.spent.over", { spent, cap, over: write(-told.left) })
    : t("scope.spent.of", { spent, cap, left: write(told.left) });
}

/** What keeps the spending from being known, by name. */
export function unknownLines(telling: Telling, said: PlanState, spent: SpentSoFar): readonly string[] {
  const names = (ids: readonly string[]): string => ids.map((id) => planName(telling, said, id)).join("; ");
  return [
    ...(spent.untimed.length > 0 ? [t("scope.untimed", { what: names(spent.untimed) })] : []),
    ...(spent.unpriced.length > 0 ? [t("scope.unpriced", { what: names(spent.unpriced) })] : []),
  ];
}

export interface ScopeTold {
  readonly title: string;
  readonly says: string;
}

/** What has to be told before anybody goes on; undefined while the work is within its caps. */
export function scopeTold({ cap }: Spent): ScopeTold | undefined {
  if (cap.state === "within") return undefined;
  const by = cap.by.map((what) => t(`scope.by.${what}`)).join(", ");
  return {
    title: `${t(`scope.${cap.state}`)} (${by})`,
    says: cap.state === "not-known" ? t("scope.notice.unknown") : t("scope.notice.says"),
  };
}
