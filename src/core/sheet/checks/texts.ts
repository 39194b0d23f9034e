/** Texts: in every language each thing shown has its words, and no words stand for nothing. Judges no wording. */
import type { Brings, Common, CommonTexts, Point, PointText, Sheet, SheetTexts } from "../schema-types.js";
import type { Path } from "../source.js";
import type { Checking } from "./known.js";

export function checkTexts(sheet: Sheet, c: Checking): void {
  const languages = Object.entries(sheet.texts);
  if (languages.length === 0) c.report.problem("texts-none", ["texts"]);
  for (const [language, texts] of languages) {
    const t = textsIn(language, texts.language, c);
    t.all(
      "points",
      sheet.points.map((p) => p.id),
      texts.points,
    );
    for (const point of sheet.points) {
      const text = texts.points[point.id];
      if (text) checkPointText(point, text, ["points", point.id], t);
    }
    checkFaults(sheet.rules, texts, t);
    t.all(
      "jobs",
      sheet.jobs.map((j) => j.id),
      texts.jobs,
    );
    t.all("parts", partsOf(sheet), texts.parts ?? {});
    t.all(
      "limits",
      sheet.limits.map((l) => l.id),
      texts.limits ?? {},
    );
    t.all(
      "derived",
      sheet.derived.map((d) => d.id),
      texts.derived ?? {},
    );
    t.all(
      "gates",
      sheet.gates.map((g) => g.id),
      texts.gates ?? {},
    );
    checkSharedTexts(sheet.brings ?? {}, texts.brings ?? {}, ["brings"], t);
  }
}

/** Words of what all share or a sheet brings: each thing has its own, and none stand for nothing. */
function checkSharedTexts(things: Brings, texts: SharedTexts, at: Path, t: Texts): void {
  const ids = (list: readonly { readonly id: string }[] = []) => list.map(({ id }) => id);
  for (const list of ["places", "states", "cautions", "gauges", "access", "facts"] as const)
    t.all([...at, list], ids(things[list]), texts[list] ?? {});
  t.all([...at, "aids"], things.aids ?? [], texts.aids ?? {});
  for (const { id, words } of things.facts ?? []) {
    const own = texts.facts?.[id];
    if (own) t.all([...at, "facts", id, "words"], words ?? [], own.words ?? {});
  }
}

export function checkCommonTexts(common: Common, c: Checking): void {
  const languages = Object.entries(common.texts);
  if (languages.length === 0) c.report.problem("texts-none", ["texts"]);
  for (const [language, texts] of languages) {
    const t = textsIn(language, texts.language, c);
    const ids = (things: readonly { readonly id: string }[]) => things.map((x) => x.id);
    checkSharedTexts(common, texts, [], t);
    t.all("gates", ids(common.gates), texts.gates);
    t.all("complaints", ids(common.complaints), texts.complaints);
    for (const { id, suspects } of common.complaints) {
      const text = texts.complaints[id];
      if (text)
        t.all(
          ["complaints", id, "suspects"],
          suspects.map((s) => s.suspect),
          text.suspects,
        );
    }
    checkFaults(common.rules, texts, t);
    t.all(
      "parts",
      common.access.flatMap((a) => a.consumables ?? []),
      texts.parts ?? {},
    );
  }
}

type SharedTexts = NonNullable<SheetTexts["brings"]>;
type Texts = ReturnType<typeof textsIn>;

function textsIn(language: string, says: string, c: Checking) {
  const base: Path = ["texts", language];
  if (says !== language) c.report.problem("text-language", [...base, "language"], { language, found: says });
  const missing = (path: Path) =>
    c.report.problem("text-missing", [...base, ...path], { language, key: path.join(" › ") });
  return {
    missing,
    unused: (path: Path) => c.report.problem("text-unused", [...base, ...path], { key: path.join(" › ") }, "key"),
    /** Each wanted key is there, and no other. */
    all(at: string | Path, wanted: readonly string[], there: Readonly<Record<string, unknown>>): void {
      const path = typeof at === "string" ? [at] : at;
      for (const key of new Set(wanted)) if (!Object.hasOwn(there, key)) missing([...path, key]);
      for (const key of Object.keys(there)) if (!wanted.includes(key)) this.unused([...path, key]);
    },
  };
}

function checkPointText(point: Point, text: PointText, path: Path, t: Texts): void {
  const { ask } = text;
  for (const who of point.who) {
    // A buyer's inspector is asked as a technician where the sheet has no wording of its own.
    const asked = who === "buyer" ? (ask.buyer ?? ask.technician) : ask[who];
    if (asked === undefined) t.missing([...path, "ask", who]);
  }
  if (!point.who.includes("owner") && text.leave === undefined) t.missing([...path, "leave"]);
  const fields = Object.keys(point.fields);
  if (fields.length > 1) t.all([...path, "fields"], fields, text.fields ?? {});
  checkWords(point, text, [...path, "words"], t);
}

/** Each reply word of each field, as `word` or, where two fields mean different things by it, `field.word`. */
function checkWords(point: Point, text: PointText, path: Path, t: Texts): void {
  const words = text.words ?? {};
  const used = new Set<string>();
  for (const [field, declared] of Object.entries(point.fields)) {
    const said = "words" in declared ? declared.words : "quantity" in declared ? (declared.results ?? []) : [];
    for (const word of said) {
      const key = [`${field}.${word}`, word].find((k) => Object.hasOwn(words, k));
      if (key === undefined) t.missing([...path, word]);
      else used.add(key);
    }
  }
  for (const key of Object.keys(words)) if (!used.has(key)) t.unused([...path, key]);
}

/** Every fault a rule names, and closer words only for rules that exist. */
function checkFaults(rules: Sheet["rules"], texts: Pick<SheetTexts | CommonTexts, "faults" | "rules">, t: Texts): void {
  t.all(
    "faults",
    rules.flatMap((r) => r.fault ?? []),
    texts.faults ?? {},
  );
  const ids = rules.map((r) => r.id);
  for (const key of Object.keys(texts.rules ?? {})) if (!ids.includes(key)) t.unused(["rules", key]);
}

const partsOf = (sheet: Sheet): readonly string[] =>
  sheet.jobs.flatMap((job) => [
    ...(job.parts ?? []).flatMap((p) => (p.set === undefined ? [p.part] : [p.part, p.set])),
    ...(job.consumables ?? []),
  ]);
