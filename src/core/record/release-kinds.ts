/** The kinds that tell of handing a car back, as rows of a plan's table: plan-kinds.ts joins them to the others. */
import { type KindOf, replaces } from "./kinds.js";
import { ANSWERS, HANDED, NEEDS, type ReleaseKind } from "./release-bodies.js";
import { both, type Check, fields, flag, isPlainObject, listOf, name, oneOf, orNull, text } from "./shape.js";
import { date } from "./shape-figures.js";

const PLAN = ["plan"] as const;
const jobAt = { job: name, place: name };
const said: Check = (value, path) => (value === "" ? { path, expected: "words" } : text(value, path));
const yes: Check = (value, path) => (value === true ? undefined : { path, expected: "true" });

/** `field` is there where `when` holds a word, and nowhere else. */
const onlyWith =
  (when: string, word: string, field: string): Check =>
  (body, path) => {
    if (!isPlainObject(body)) return undefined;
    const isThere = Object.hasOwn(body, field);
    if (isThere === (body[when] === word)) return undefined;
    return { path: `${path}.${field}`, expected: isThere ? `${word} with it` : `to be there with ${word}` };
  };

/** An answer says something: a finding where it was found, else words. */
const saysSomething: Check = (body, path) => {
  if (!isPlainObject(body) || !Array.isArray(body["findings"])) return undefined;
  const named = body["findings"].length;
  if (named > 0 && body["word"] !== "found") return { path: `${path}.findings`, expected: "found with them" };
  return named > 0 || body["words"] !== "" || body["word"] === "needs"
    ? undefined
    : { path: `${path}.words`, expected: "words, or a finding" };
};

const answer = both(
  fields(
    {
      word: oneOf(ANSWERS),
      findings: listOf(fields({ fault: name, place: name })),
      words: text,
      who: name,
      on: date,
    },
    { needs: oneOf(NEEDS) },
  ),
  both(onlyWith("word", "needs", "needs"), saysSomething),
);
const release = both(
  fields(
    { who: name, on: date, how: oneOf(HANDED), told: listOf(text) },
    { odometer: fields({ value: name, unit: text }), warned: yes },
  ),
  onlyWith("how", "not-driven", "warned"),
);
/** Taking back what was released says why. */
const reasoned: Check = (body, path) => {
  if (!isPlainObject(body)) return undefined;
  const isReasoned = typeof body["reason"] === "string" && body["reason"] !== "";
  if (isReasoned === (body["release"] === null)) return undefined;
  return { path: `${path}.reason`, expected: isReasoned ? "not to be there with a release" : "why it is taken back" };
};

export const RELEASE_ROWS: { readonly [K in ReleaseKind]: KindOf<K> } = {
  "complaint.answered": {
    v: 1,
    streams: PLAN,
    check: fields({ complaint: name, answer: orNull(answer), replaces }),
    slots: (b) => [`answer|${b.complaint}`],
  },
  "progress.sent": {
    v: 1,
    streams: PLAN,
    check: fields({ text: said, who: name, how: name, on: date }),
    slots: () => ["progress|"],
  },
  "second-look": {
    v: 1,
    streams: PLAN,
    check: fields({ ...jobAt, who: name, on: date, words: said, same: flag }),
    slots: (b) => [`second|${b.job}@${b.place}`],
  },
  "recheck.done": {
    v: 1,
    streams: PLAN,
    check: fields({ recheck: name, who: name, on: date, words: text }),
    slots: (b) => [`recheck|${b.recheck}`],
  },
  "plan.release": {
    v: 1,
    streams: PLAN,
    check: both(fields({ release: orNull(release), replaces }, { reason: text }), reasoned),
    slots: () => ["release|"],
  },
};
