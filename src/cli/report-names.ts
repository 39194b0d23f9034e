/** What things are called in a hand-over of the terminal: looked up in the texts of the loaded sheets. Judges nothing. */
import type { Checklists } from "../build/load-checklists.js";
import { type FaultWording, faultWords, type HandoverNames } from "../core/report/index.js";
import type { CommonTexts, SheetTexts } from "../core/sheet/run.js";
import type { Audience, ReplyKey, ReplyValue } from "../core/terms/index.js";
import { unitOf } from "../core/units/index.js";

const LANGUAGE = "en";

/** Every look-up for who reads; an id nobody has words for stands as itself. */
export function namesOf(
  { whole: common, wholeWithTexts: commonWithTexts, sheets }: Checklists,
  who: Audience,
): HandoverNames {
  const shared: CommonTexts | undefined = commonWithTexts.texts[LANGUAGE];
  const all = sheets.flatMap(({ sheet: { texts } }): readonly SheetTexts[] => {
    const own = texts[LANGUAGE];
    return own === undefined ? [] : [own];
  });
  const built = sheets.map(({ built: { sheet } }) => sheet);
  const kinds = new Map(common.common.places.map(({ id, kind }) => [id, kind]));
  const rules = [...common.common.rules, ...built.flatMap((sheet) => sheet.rules)];
  const points = new Map(built.flatMap((sheet) => sheet.points.map((point) => [point.id, point] as const)));
  const pointText = (point: string): SheetTexts["points"][string] | undefined =>
    first(all, (texts) => texts.points[point]);
  const voiced = (text: { readonly says: string; readonly owner?: string | undefined }): string =>
    who === "owner" ? (text.owner ?? text.says) : text.says;
  const told = [shared, ...all];
  const wordingOf = (fault: string): FaultWording => ({
    ofRule: (rule) => first(told, (texts) => texts?.rules?.[rule]),
    ofFault: first(told, (texts) => texts?.faults?.[fault]),
  });
  return {
    fault: (fault, named, worst = []) => faultWords(wordingOf(fault), named, worst, who) ?? { says: fault },
    rule: (rule) => {
      const { ofRule, ofFault } = wordingOf(rules.find(({ id }) => id === rule)?.fault ?? "");
      const text = ofRule(rule) ?? ofFault;
      return text === undefined ? rule : voiced(text);
    },
    answersTo: (rule) => rules.find(({ id }) => id === rule)?.["answers-to"],
    place: (place) => (place === "car" ? "" : (shared?.places[place] ?? place)),
    // The headings of kinds have their words in the app alone.
    kind: (place) => (place === "car" ? undefined : kinds.get(place)?.replaceAll("-", " ")),
    point: (point) => pointText(point)?.name ?? point,
    tool: (point) => points.get(point)?.tool ?? "",
    state: (state) => shared?.states[state]?.name ?? state,
    reply: (key, value) => replyText(key, value, pointText(key.point), who),
    fact: (fact, value) => {
      const text = shared?.facts[fact];
      const said = typeof value === "boolean" ? (value ? "yes" : "no") : String(value);
      return { name: text?.name ?? fact, value: text?.words?.[said] ?? said };
    },
    derived: (id) => first(all, (texts) => texts.derived?.[id]) ?? id,
    limitDirection: (limit) => built.flatMap(({ limits }) => limits).find(({ id }) => id === limit)?.direction,
    caution: (caution) => shared?.cautions[caution] ?? { not: caution, why: "", can: "", do: "" },
    gate: (gate) => {
      const text = shared?.gates[gate] ?? first(all, (texts) => texts.gates?.[gate]);
      return text ?? { name: gate, tripped: "", first: "" };
    },
    job: (job) => {
      const text = first(all, (texts) => texts.jobs[job]);
      if (text === undefined) return { name: job, does: "" };
      return { name: text.name, does: who === "owner" ? (text.owner ?? text.does) : text.does };
    },
    sheet: (sheet) => sheets.find(({ built: { sheet: of } }) => of.id === sheet)?.sheet.texts[LANGUAGE]?.title ?? sheet,
    // The reasons of planning have their words in the app alone; the terminal prints their codes under `assess`.
    why: () => undefined,
  };
}

/** What the first that has something says. */
function first<From, T>(from: readonly From[], of: (one: From) => T | undefined): T | undefined {
  for (const one of from) {
    const found = of(one);
    if (found !== undefined) return found;
  }
  return undefined;
}

function replyText(
  { field }: ReplyKey,
  value: ReplyValue,
  text: SheetTexts["points"][string] | undefined,
  who: Audience,
): string {
  switch (value.type) {
    case "words":
      return value.words
        .map((word) => {
          const kept = text?.words?.[`${field}.${word}`] ?? text?.words?.[word] ?? word;
          return typeof kept === "string" ? kept : who === "owner" ? kept.owner : kept.technician;
        })
        .join(", ");
    case "reading":
      return `${value.values.join(" / ")} ${unitOf(value.unit)?.shown ?? value.unit}`.trim();
    case "count":
      return String(value.count);
    case "yes":
      return value.yes ? "yes" : "no";
    case "date-code":
      return value.text;
    case "non-answer":
      return value.words ?? value.reason ?? value.nonAnswer;
  }
}
