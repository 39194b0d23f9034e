/**
 * What an owner is told of a fault that can be major or dangerous, over all shipped sheets: no wording that sounds like
 * wear or age alone, what a rule warns of in words of its own, and in a hand-over always what it means for driving.
 */
import { expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { faultWords, handover, handoverPages, toText } from "../../src/core/report/index.js";
import type { Rule, SheetTexts } from "../../src/core/sheet/run.js";
import { GRADES, type Grade, levelOf } from "../../src/core/terms/index.js";
import { fault, job, soundVisit, WORDS } from "../support/handover-visit.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const lists = result.value;
const limits = lists.sheets.flatMap(({ built }) => built.sheet.limits);
const rules = [...lists.whole.common.rules, ...lists.sheets.flatMap(({ built }) => built.sheet.rules)];
const texts = [lists.wholeWithTexts.texts["en"], ...lists.sheets.map(({ sheet }) => sheet.texts["en"])].filter(
  (one): one is NonNullable<typeof one> => one !== undefined,
);
type FaultText = NonNullable<SheetTexts["faults"]>[string];
const first = (of: (one: (typeof texts)[number]) => FaultText | undefined): FaultText | undefined =>
  texts.map(of).find((one) => one !== undefined);

/** A limit over a reading, as conditions write it; the name may carry the field it is read in. */
const isOver = (of: string, named: string): boolean => {
  const bare = of.replaceAll("-", "_");
  return `${named.replaceAll("-", "_")}_`.startsWith(`${bare}_`);
};

/** The gravest grade a rule can come to. */
function gravest({ grade, worse }: Rule): Grade {
  const reached: Grade[] = worse === undefined ? [] : [worse.grade];
  if (typeof grade === "string") reached.push(grade);
  else if (grade !== undefined) {
    const bands = limits.filter(({ of }) => isOver(of, grade["limit-of"])).flatMap((limit) => Object.keys(limit.bands));
    reached.push(...GRADES.filter((one) => bands.includes(one)));
    if (grade["at-least"] !== undefined) reached.push(grade["at-least"]);
  }
  return GRADES.findLast((one) => reached.includes(one)) ?? "advisory";
}

const told = rules.flatMap((rule) => {
  if (rule.fault === undefined || levelOf(gravest(rule)) < levelOf("major")) return [];
  const ofFault = first((one) => one.faults?.[rule.fault ?? ""]);
  const wording = { ofRule: (id: string) => first((one) => one.rules?.[id]), ofFault };
  const says = faultWords(wording, [rule.id], [rule.id], "owner")?.says ?? "";
  return [{ rule: rule.id, fault: rule.fault, grade: gravest(rule), says }];
});

test("there are many such rules, and every limit a grade names is found", () => {
  expect(told.length).toBeGreaterThan(200);
  const named = rules.flatMap(({ grade }) => (typeof grade === "object" ? [grade["limit-of"]] : []));
  expect(named.filter((one) => !limits.some(({ of }) => isOver(of, one)))).toEqual([]);
});

test("none of them is told to an owner as age, wear that begins, or something to be set", () => {
  const MILD =
    /\b(due for|begin(s|ning)? to|needs? (a |an )?(set|clean|adjust|chang)\w*|tired|aged|wearing out|getting|going soft|a (little|bit)|slightly|stiff|corroding|rusting)\b/i;
  expect(told.filter(({ says }) => MILD.test(says)).map(({ rule, says }) => `${rule}: ${says}`)).toEqual([]);
});

/** A sentence of the workshop that forbids something, or has it stop. */
const FORBIDS =
  /(?<!does )\bnot (driven|run|released)\b|\bdo not (drive|run|start)\b|\bbefore it is driven\b|\bno more driving\b|\bstays in until\b|\bstop lifting\b|[:.] stop\b/i;
/** The same said to an owner. */
const FORBIDDEN = /\b(do not|not released|leave it|(?<!may )stop|too much .* to drive)\b/i;
/** What comes of it. */
const WARNS =
  /\b(may|can|will) (?!be\b)\w+|\b(falls?|comes?|drops?|breaks?|pulls?|walks|jumps?|lets? go) (off|out|through|up|there|first|all)\b|\b(burns|seizes?)\b|\blet go\b|\bgives? way\b|\bgiven way\b|\bdoes not hold\b|\babout to\b|\bon hold\b|\bnot fitted\b/i;
/** How bad it is. */
const BAD =
  /\b(a third|half of|gone|missing|cracked|broken|holed|dark|dead|badly|sheared|split|lost|much|far)\b|\b(goes|cracked) through\b/i;
/** Whose fault says as much to an owner in its own words. */
const SAID_BY_FAULT: ReadonlyMap<string, string> = new Map([["whl.r24", "The wheel is not safely fixed"]]);

const raised = new Set(rules.flatMap(({ effect }) => (typeof effect === "object" && "raise" in effect ? [effect.raise] : [])));
/** Major or worse, or raised to it by another rule; where its own sentence is what the workshop reads. */
const grave = rules.flatMap((rule) => {
  const own = first((one) => one.rules?.[rule.id]);
  if (rule.fault === undefined || own === undefined) return [];
  if (levelOf(gravest(rule)) < levelOf("major") && !raised.has(rule.fault)) return [];
  return [{ id: rule.id, says: own.says, owner: own.owner, ofFault: first((one) => one.faults?.[rule.fault ?? ""])?.owner }];
});

test("what the workshop reads as a warning, an owner reads in the rule's own words, never the fault's general ones", () => {
  const warning = grave.filter(({ says }) => [FORBIDS, WARNS, BAD].some((one) => one.test(says)));
  expect(warning.length).toBeGreaterThan(200);
  const milder = warning.filter(({ owner, ofFault }) => ofFault !== undefined && (owner === undefined || owner === ofFault));
  expect(milder.filter(({ id, ofFault }) => SAID_BY_FAULT.get(id) !== ofFault)).toEqual([]);
});

test("what the workshop may not do with the car, an owner is told not to do", () => {
  const forbidding = grave.filter(({ says }) => FORBIDS.test(says));
  expect(forbidding.length).toBeGreaterThan(15);
  expect(forbidding.filter(({ owner }) => owner === undefined || !FORBIDDEN.test(owner))).toEqual([]);
});

test("in an owner's hand-over each of them says what it means for driving, on the first page and with the finding", () => {
  const faults = told.map(({ fault: id, rule, grade, says }, at) =>
    fault({ fault: id, place: `p${at}`, title: says, where: "", grade, rules: [rule] }),
  );
  const urgent = faults.map((of) => ({ ...of, grade: "minor" as const, place: `${of.place}-due` }));
  const jobs = urgent.map(({ fault: of, place }) =>
    job({ id: `job@${place}`, faults: [{ fault: of, place }], byWhen: { class: 1 } }),
  );
  const input = soundVisit({ for: "owner", faults: [...faults, ...urgent], jobs });
  const model = handover(input);
  const lead = { dangerous: "Do not drive the car until this is mended.", major: "To be mended before the car is used" };
  const lines = toText(handoverPages(model, WORDS), WORDS).split("\n");
  for (const { letter, title, grade } of model.findings) {
    const wanted = grade === "dangerous" || grade === "major" ? lead[grade] : "To be mended before the next drive.";
    const waiting = lines.find((line) => line.startsWith(`- ${letter}: ${title}`));
    expect(waiting, title).toContain(wanted);
    const own = lines.findIndex((line) => line.startsWith(`${letter}. `) && line.includes(title));
    expect(lines[own + 1], title).toContain(wanted);
  }
});
