/** The verb `plan FILE`: questions of planning in, worked out anew under their own names. Knows no section's inside. */
import { nearest } from "../core/terms/author.js";
import type { Problem } from "../core/terms/index.js";
import { SECTIONS } from "./plan-sections/all.js";
import { remarks, type Section } from "./plan-sections/section.js";
import { type At, asFields, inside } from "./plan-sections/shape.js";
import { isWorkList, workListAnswer } from "./plan-sections/whole.js";
import { tellPlanFile } from "./plan-told.js";
import { jsonNear } from "./read-near.js";
import type { Terminal } from "./sheets.js";

const USE = `use: plan FILE
  FILE  JSON: sections under their names, one section, or one case of a section:
        ${[...SECTIONS.keys()].join(", ")}
  or a whole work list: {faults, jobs, access, budget, calendar, rates, people, lifts, suppliers}
  Every section comes back with its own fields, all worked out anew and none read from the file.
  Figures by simulation (mc_…) and measured times are left out.`;

/** Prints what is sound; what is faulty is told and null. Gives 0, 1 for faulty input, 2 for wrong use. */
export async function planVerb(args: readonly string[], { out, err }: Terminal): Promise<0 | 1 | 2> {
  const [file, ...more] = args;
  if (file === undefined || more.length > 0 || file.startsWith("-")) {
    err(USE);
    return 2;
  }
  const data = await jsonNear(file, err);
  if (typeof data === "number") return data;
  const problems: Problem[] = [];
  const answer = answered(data.value, { path: "", problems });
  if (answer !== undefined) out(JSON.stringify(answer, null, 2));
  for (const one of problems) err(`${file}: ${tellPlanFile(one)}`);
  return problems.length > 0 ? 1 : 0;
}

/** The answer to whatever the file holds; undefined where nobody can tell what it asks. */
function answered(value: unknown, at: At): unknown {
  const given = asFields(value);
  if (given !== undefined && isWorkList(given)) return workListAnswer(given, at);
  if (given !== undefined && Object.keys(given).some((key) => SECTIONS.has(key))) return bySection(given, at);
  const all = [...SECTIONS.values()];
  const section = all.find((one) => one.isSection(value));
  if (section !== undefined) return section.answer(value, at);
  const owner = given && all.find((one) => one.isCase?.(given) === true);
  if (owner?.answerCase !== undefined) return owner.answerCase(value, at);
  at.problems.push({ code: "plan-file.nothing-known", where: {}, params: { expected: [...SECTIONS.keys()] } });
  return undefined;
}

/** Sections under their names; what the file says about itself is kept. */
function bySection(given: Readonly<Record<string, unknown>>, at: At): Readonly<Record<string, unknown>> {
  const answers = Object.entries(given).flatMap(([key, value]): (readonly [string, unknown])[] => {
    const section: Section | undefined = SECTIONS.get(key);
    if (section !== undefined) return [[key, section.answer(value, inside(at, key))]];
    if (ABOUT.has(key)) return [[key, value]];
    const params = { found: key, expected: nearest(key, SECTIONS.keys()) };
    at.problems.push({ code: "plan-file.no-section", where: { path: key }, params });
    return [];
  });
  return { ...remarks(given), ...Object.fromEntries(answers) };
}
const ABOUT = new Set(["about", "srcKinds", "src", "note"]);
