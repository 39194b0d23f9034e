/** The because of a finding step by step, in words and figures. Concludes nothing of its own. */
import type { Because, Finding } from "../../assess/index.js";
import { levelOf, type ReplyKey } from "../../terms/index.js";
import type { Gathered } from "./gather.js";
import type { StepTold } from "./input.js";

/** Which sense it was, by the aid a point names; an aid not listed is looked with. */
const SENSES = [
  [/stethoscope|ear|listen|phone|rod/, "heard"],
  [/hand|palm|helper|finger|foot/, "felt"],
  [/paper|book|talk|owner/, "told"],
] as const;
const STATE_SENSES: Readonly<Record<string, "told" | "heard">> = { "w0-talk": "told", "w4-road": "heard" };

type Told = Pick<Gathered, "names" | "assessment">;

function senseOf({ names }: Told, { point, state }: ReplyKey, isReading: boolean): Exclude<StepTold["is"], "limit"> {
  if (isReading) return "measured";
  const tool = names.tool(point);
  return SENSES.find(([pattern]) => pattern.test(tool))?.[1] ?? STATE_SENSES[state] ?? "seen";
}

/** Every step of the findings behind one fault, the graver findings first; what two of them name stands once. */
export function stepsOf(of: Told, findings: readonly Finding[]): readonly StepTold[] {
  const seen = new Set<string>();
  return [...findings]
    .sort((a, b) => levelOf(b.grade) - levelOf(a.grade))
    .flatMap(({ because, place }) => because.map((one) => stepOf(of, one, place)))
    .filter((step) => {
      const text = JSON.stringify(step);
      if (seen.has(text)) return false;
      seen.add(text);
      return true;
    });
}

function stepOf(of: Told, step: Because, at: string): StepTold {
  const { names } = of;
  const elsewhere = (place: string): string => {
    const where = place === at ? "" : names.place(place);
    return where === "" ? "" : `, ${where}`;
  };
  switch (step.kind) {
    case "reply": {
      const { key, value, supports } = step;
      const words = `${names.point(key.point)}: ${names.reply(key, value)}${elsewhere(key.place)}`;
      return { is: senseOf(of, key, value.type === "reading"), words, ...(supports ? { supports } : {}) };
    }
    case "earlier": {
      const { key, value } = step;
      const words = `${names.point(key.point)}: ${names.reply(key, value)}${elsewhere(key.place)}`;
      return { is: "earlier", words, on: step.at.slice(0, 10) };
    }
    case "fact": {
      const { name, value } = names.fact(step.name.replaceAll("_", "-"), step.value);
      return { is: "fact", words: `${name}: ${value}` };
    }
    case "limit": {
      const { limit, value, uncertainty, edge, unit, grade, basis, source, isDefault } = step;
      const direction = names.limitDirection(limit) ?? "over";
      return { is: "limit", limit, value, uncertainty, edge, unit, grade, basis, source, isDefault, direction };
    }
    case "derived": {
      const { id, value, uncertainty, unit, place } = step;
      const figure = uncertainty > 0 ? `${tidied(value)} ± ${tidied(uncertainty)}` : tidied(value);
      return {
        is: "worked-out",
        words: `${names.derived(id)}: ${figure} ${unit === "1" ? "" : unit}${elsewhere(place)}`.trim(),
      };
    }
    case "found": {
      const { says } = names.fault(step.fault, []);
      return { is: "found", words: `${says}${elsewhere(step.place)}` };
    }
    case "raised":
      return { is: "raised", words: names.rule(step.rule) };
    case "own-words": {
      const on = new Date(step.at).toISOString().slice(0, 10);
      return { is: "seen", words: [step.words, step.reason].filter((one) => one !== "").join(". "), on };
    }
  }
}

const tidied = (value: number): string => String(Number(value.toPrecision(4)));
