/**
 * A sheet under work tried with sample replies: what is said, what comes out of it, what one reply more would decide.
 * Replies are written as cases write them, so that a case can be made of them. Pure; keeps nothing.
 */
import { caseReplies, NOTHING_SAID } from "../../core/assess/author.js";
import { type AssessInput, type Engine, explainIn, type Session, start } from "../../core/assess/index.js";
import { type Field, mainField, type Point, type Rule, type SheetCase, withBrought } from "../../core/sheet/run.js";
import { type Lookup, lookupFor, partOfSheet, readCaseReply, type Typed } from "../../core/sheet/work.js";
import { expectFrom } from "./case-lines.js";
import { type Knowledge, knowledgeOf } from "./knowledge.js";
import { itemsIn, type SheetWork } from "./sheet-work.js";
import { LANGUAGE } from "./shelf.js";

export type Said = Readonly<Record<string, Typed>>;
export type SaidFacts = AssessInput["car"]["facts"];

/** What is said stays while a rule is mended and tried again: by the working copy. */
export const tried = new Map<string, { readonly said: Said; readonly facts: SaidFacts }>();

/** What replies are tried on. */
export interface Trial {
  readonly look: Lookup;
  readonly known: Knowledge;
  readonly sheets: readonly string[];
  /** The visit before anything is said. */
  readonly untouched: Session;
}

export function trialOf(
  { sheet, common, others }: Pick<SheetWork, "sheet" | "common" | "others">,
  { engine, sheets }: { readonly engine: Engine; readonly sheets: readonly string[] },
): Trial {
  const beside = others.filter(({ id }) => id !== sheet.id && sheets.includes(id));
  const whole = withBrought(common, beside);
  const words = common.texts[LANGUAGE] ?? Object.values(common.texts)[0];
  if (words === undefined) throw new Error("The shared files have no words");
  const open = [sheet, ...beside].flatMap((one) => {
    const texts = one.texts[LANGUAGE] ?? Object.values(one.texts)[0];
    return texts ? [{ sheet: one, texts }] : [];
  });
  return {
    look: lookupFor(partOfSheet(sheet), whole, beside.map(partOfSheet)),
    known: knowledgeOf(common, words, open),
    sheets,
    untouched: start(engine, { ...NOTHING_SAID, sheets }),
  };
}

/** Problems that stand in nobody's way of trying a sheet: a case that is still to be made is made by trying. */
const HARMLESS: ReadonlySet<string> = new Set([
  ...["no-firing-case", "no-near-miss", "near-miss-one", "near-miss-new", "near-miss-same", "near-miss-unknown"],
  ...["case-expects-other", "case-failed"],
]);
/** Whether a sheet can be tried as it stands: nothing stands against it but cases still to come. */
export const canBeTried = ({ told, checked }: Pick<SheetWork, "told" | "checked">): boolean =>
  checked === "now" && told.every(({ is, code }) => is === "note" || HARMLESS.has(code));

const numbers = new WeakMap<object, number>();
let last = 0;
/** A key for a sheet as it is now: another after every change. */
export function keyOfSheet({ sheet }: Pick<SheetWork, "sheet">): string {
  const number = numbers.get(sheet) ?? ++last;
  numbers.set(sheet, number);
  return String(number);
}

/** What is said as a visit holds it; undefined where something is said that no point takes. */
export function inputFor({ look, sheets }: Trial, said: Said, facts: SaidFacts): AssessInput | undefined {
  const replies = caseReplies(said, look);
  return replies && { ...NOTHING_SAID, car: { facts, limits: [] }, sheets, replies };
}

/** How a case names one field of a point at a place. */
export function keyFor(point: Point, field: string, place: string): string {
  const name = field === mainField(point) ? point.id : `${point.id.replaceAll("-", "_")}_${field.replaceAll("-", "_")}`;
  const at = place === "car" ? "" : `@${place}`;
  const [state = "", ...more] = point.states;
  return more.length === 0 ? `${name}${at}` : `${name}${at}#${state}`;
}

/** Whether something can be said so; readings are read as they are typed in a case. */
export const takes = ({ look }: Pick<Trial, "look">, key: string, typed: Typed): boolean =>
  readCaseReply(key, typed, look, [key], () => ({})).ok;

export const withSaid = (said: Said, key: string, typed: Typed | undefined): Said => {
  const { [key]: _, ...rest } = said;
  return typed === undefined ? rest : { ...rest, [key]: typed };
};

/** A reading as a case writes it: with its unit, unless one was typed. */
export const readingText = (text: string, field: Extract<Field, { quantity: string }>): string =>
  /[a-z°%]/i.test(text) || field.unit === "1" ? text.trim() : `${text.trim()} ${field.unit}`;

/** Whether a rule holds somewhere, and where it is the nearest to holding: first true, then not known, then false. */
export interface WhyNot {
  readonly place: string;
  readonly is: "true" | "false" | "unknown";
  /** Points and places it waits for; none where it does not apply. */
  readonly waits: readonly string[];
}
export function whyNot({ look }: Pick<Trial, "look">, session: Session, rule: Rule): readonly WhyNot[] {
  const open = session.kept.site.rules.some((node) => node.rule.rule.id === rule.id);
  if (!open) return [];
  const order = { true: 0, unknown: 1, false: 2 } as const;
  return look.tree
    .ofKind(rule.scope)
    .map((place): WhyNot => {
      const { is, missing } = explainIn(session, rule.id, place);
      return { place, is, waits: missing };
    })
    .sort((a, b) => order[a.is] - order[b.is]);
}

/** A case of what is said: it expects of the rule what came out of it now. */
export function caseOf(rule: Rule, session: Session, said: Said, facts: SaidFacts): SheetCase {
  const mutable = Object.fromEntries(
    Object.entries(said).map(([key, typed]) => [key, typeof typed === "object" ? [...typed] : typed] as const),
  );
  return {
    fires: rule.id,
    ...(Object.keys(facts).length === 0 ? {} : { facts: { ...facts } }),
    replies: mutable,
    expect: { ...expectFrom(rule, session.assessment) },
  };
}

/** A name for one more item of a list whose items have no id; never one that was given before. */
export function freshNumber(work: Pick<SheetWork, "base" | "changes">, list: "cases" | "nextLooks"): string {
  const names = [...itemsIn(work, list).keys(), ...(work.changes.items.get(list)?.keys() ?? [])];
  const numbers = names.map((name) => Number(name.slice(1))).filter(Number.isInteger);
  return `#${Math.max(work.base[list].length - 1, ...numbers, -1) + 1}`;
}
