/**
 * What an owner is told of a fault that can be major or dangerous, over all shipped sheets: no wording that sounds like
 * wear or age alone, and in a hand-over always what it means for driving.
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
