/**
 * What was told first, what came on top, and where the work stands against it. Pure; every sum comes from core/plan.
 */
import {
  type Addition,
  addedWork,
  COLUMNS,
  type Column,
  type DoneWork,
  doneWork,
  type Estimate,
  type Forecast,
  forecast,
  type Three,
  type WorkInput,
} from "../../core/plan/index.js";
import type { Bodies, PlanState } from "../../core/record/index.js";
import { plainDay } from "../texts/days.js";
import { rounded } from "../texts/index.js";
import { t } from "../texts/plan-estimate.js";
import { readFirst } from "./first-estimate.js";
import { type Currency, moneyText } from "./money-words.js";
import type { EstimateRow, Estimating } from "./plan-estimate-view.js";
import { last } from "./plan-input.js";
import { minutesTold } from "./plan-spent.js";
import { planName, spanText } from "./plan-words.js";

/** What the owner is told where no first estimate says otherwise: kept under four times in five. */
const TOLD: Column = "p80";

export interface GivenLine {
  readonly id: string;
  readonly title: string;
  readonly figure?: string;
}

/** Every estimate given, oldest first: the first one stays the first. */
export function givenLines({ estimates }: PlanState, currency: Currency): readonly GivenLine[] {
  return estimates.map(({ id, value }, index): GivenLine => {
    const when = { day: plainDay(value.on) };
    const first = readFirst(value.estimate);
    if (!first) return { id, title: t("estimate.given.unreadable", when) };
    const title = index === 0 ? t("estimate.given.first", when) : t("estimate.given.later", when);
    return { id, title, figure: moneyText(first.gross[first.told], { ...currency, currency: first.currency }) };
  });
}

export type SaidAddition = Omit<Bodies["estimate.addition"], "replaces">;

export interface AdditionLine {
  readonly said: SaidAddition;
  readonly title: string;
  readonly lines: readonly string[];
  /** Absent where the house has no terms that hold. */
  readonly gross?: number;
  readonly figure?: string;
  readonly isAgreed: boolean;
}

/** What an addition comes to today with tax, by its own hours and price; undefined while the house has no terms. */
export const grossOf = (
  { terms, today }: Pick<WorkInput, "terms" | "today">,
  { addition, minutes, price }: Pick<SaidAddition, "addition" | "minutes" | "price">,
  told: Column = TOLD,
): number | undefined => terms && addedWork(terms, today, { id: addition, minutes, price })?.gross[told];

/** What came on top, priced by its own hours and price; what somebody agreed to stays what it was then. */
export function additionLines({ said, input }: Estimating, currency: Currency | undefined): readonly AdditionLine[] {
  const told = readFirst(said.estimates[0]?.value.estimate)?.told ?? TOLD;
  return [...said.additions.values()].flatMap((standing) => {
    const one = last(standing);
    if (!one) return [];
    const { words, reason, minutes, price, agreed } = one;
    const gross = agreed && one.gross !== undefined ? one.gross : grossOf(input, one, told);
    const spans = [spanText(minutes), ...(currency ? [priceText(price, currency)] : [])].join(", ");
    const by = agreed
      ? agreed.how.trim() === ""
        ? t("addition.by.brief", { who: agreed.who, day: plainDay(agreed.on) })
        : t("addition.by", { who: agreed.who, how: agreed.how, day: plainDay(agreed.on) })
      : t("addition.by-nobody");
    return [
      {
        said: one,
        title: words,
        lines: [...(reason.trim() === "" ? [] : [reason]), spans, by],
        ...(gross === undefined ? {} : { gross }),
        ...(gross === undefined || !currency ? {} : { figure: moneyText(gross, currency) }),
        isAgreed: agreed !== null,
      },
    ];
  });
}

function priceText([low, , high]: Three, currency: Currency): string {
  const [from, to] = [moneyText(low, currency), moneyText(high, currency)];
  return low === high ? from : `${from}–${to}`;
}

export interface ForecastTold {
  readonly rows: readonly EstimateRow[];
  readonly mark: Forecast["mark"];
  readonly verdict: string;
  readonly says: string;
  readonly remarks: readonly string[];
}

/** Where the work stands against what was told first; undefined until that is given and a plan is there. */
export function forecastTold(
  of: Estimating,
  currency: Currency,
): ForecastTold | { readonly trouble: string } | undefined {
  const { said, input, plan, telling } = of;
  const given = said.estimates[0];
  const first = readFirst(given?.value.estimate);
  if (!given || !first || !plan?.estimate) return undefined;
  const added = additionLines(of, currency).flatMap(({ said: one, gross }): readonly Addition[] =>
    gross === undefined ? [] : [{ id: one.addition, gross, agreed: one.agreed }],
  );
  const paidFor = new Set(plan.estimate.lines.flatMap(({ kind, id }) => (kind === "access" ? [id] : [])));
  const done = doneWork(input, minutesTold(said), paidFor);
  const got = forecast(first, presentOf(plan.estimate, done, added), added);
  if (!got.ok) {
    const isOther = got.problems.some(({ code }) => code === "forecast.currency");
    return { trouble: isOther ? t("forecast.differs") : t("forecast.unknown") };
  }
  const names = (ids: readonly string[]): string => ids.map((id) => planName(telling, said, id)).join("; ");
  const aside = [...new Set([...got.value.remarks.flatMap(({ params }) => asList(params["ids"])), ...plan.setAside])];
  return {
    rows: forecastRows(got.value, given.value.on, currency),
    mark: got.value.mark,
    verdict: t(`forecast.${got.value.mark}`),
    says: overText(got.value, currency),
    remarks: [
      ...(aside.length > 0 ? [t("forecast.aside", { what: names(aside) })] : []),
      ...(done.untimed.length > 0 ? [t("forecast.untimed", { what: names(done.untimed) })] : []),
    ],
  };
}

const asList = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);

/** All that is agreed as it looks now: what is left to do, what is done, and what was agreed on top. */
function presentOf(rest: Estimate, { estimate: done }: DoneWork, added: readonly Addition[]) {
  const agreed = added.filter((one) => one.agreed).reduce((sum, { gross }) => sum + gross, 0);
  const gross = { ...rest.gross };
  for (const column of COLUMNS) gross[column] += (done?.gross[column] ?? 0) + agreed;
  return { currency: rest.currency, gross, setAside: [...rest.setAside, ...(done?.setAside ?? [])] };
}

function forecastRows(got: Forecast, on: string, currency: Currency): readonly EstimateRow[] {
  const row = (id: string, title: string, minor: number): EstimateRow => ({
    id,
    title,
    figure: moneyText(minor, currency),
    because: [],
  });
  return [
    row("first", t("forecast.first", { day: plainDay(on) }), got.first),
    ...(got.agreedAdditions === 0
      ? []
      : [row("added", t("forecast.added"), got.agreedAdditions), row("agreed", t("forecast.agreed"), got.agreed)]),
    row("present", t("forecast.present"), got.present),
    ...(got.notAgreed.length === 0
      ? []
      : [row("open", t("forecast.open"), got.notAgreedSum), row("whole", t("forecast.whole"), got.forecast)]),
  ];
}

const PER_CENT = 100;
function overText({ over, overBasisPoints }: Forecast, currency: Currency): string {
  if (over <= 0) return over === 0 ? "" : t("forecast.under", { under: moneyText(-over, currency) });
  const told = { over: moneyText(over, currency) };
  if (overBasisPoints === null) return t("forecast.over.nothing", told);
  return t("forecast.over", { ...told, percent: rounded(overBasisPoints / PER_CENT, 1) });
}
