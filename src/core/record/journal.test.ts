import { expect, test } from "vitest";
import { act, carAndVisit, foreign, fresh, key, pictureDraft, replyDraft, words } from "../../../tests/store/sample.js";
import type { Logged } from "./contract.js";
import { draftCar } from "./draft.js";
import { JOURNAL_FORMAT, lineOf, readJournal, writeJournal } from "./journal.js";

const header = JSON.stringify({ format: JOURNAL_FORMAT });
const reply = foreign(replyDraft("visit:v", "whl.spin", words("rough")), "w1", 1);
const file = (...lines: string[]): string => `${[header, ...lines].join("\n")}\n`;
const told = (text: string): readonly string[] => {
  const read = readJournal(text);
  return read.ok
    ? ["read"]
    : read.problems.map(({ code, where }) => `${where.line} ${code} ${where.path ?? ""}`.trim());
};
/** The line of an entry with some of its fields changed or, by undefined, taken out. */
const lineWith = (change: object): string => JSON.stringify({ ...reply, ...change });

test("[RC37] reading what was written gives the same log, entries and stubs, in order of ids", () => {
  const { car, visit, drafts } = carAndVisit();
  const [begun, opened] = drafts;
  if (!begun || !opened) throw new Error("no drafts");
  const { stream, writer, seq, nonce, at } = reply;
  const log: Logged[] = [
    foreign(opened, "w2", 1),
    foreign(begun, "w10", 1),
    foreign(begun, "w9", 2),
    { stream, writer, seq, nonce, at },
  ];
  const text = writeJournal([...log, ...log]);
  const read = readJournal(text);
  expect(read.ok && read.value.map(({ stream: of, writer: by, seq: n }) => `${of} ${by} ${n}`)).toEqual([
    `${car} w10 1`,
    `${car} w9 2`,
    ...[`${visit} w2 1`, "visit:v w1 1"].sort(),
  ]);
  expect(read.ok && writeJournal(read.value)).toBe(text);
  expect(text.endsWith("\n")).toBe(true);
});

test("[RC37] a line has its keys in one order and a stub no more than identity and time", () => {
  const { stream, writer, seq, nonce, at } = reply;
  expect(Object.keys(JSON.parse(lineOf({ ...reply }))).join(" ")).toBe("stream writer seq nonce at by act kind v body");
  expect(lineOf({ at, nonce, seq, writer, stream })).toBe(JSON.stringify({ stream, writer, seq, nonce, at }));
});

test("[RC37] a byte-order mark and carriage returns from another system are read over", () => {
  expect(told(`\uFEFF${header}\r\n${lineOf(reply)}\r\n`)).toEqual(["read"]);
});

test("[RC38] a file without the first line, or of a newer format, is refused", () => {
  expect(told("")).toEqual(["1 record.no-format"]);
  expect(told(`${lineOf(reply)}\n`)).toEqual(["1 record.no-format"]);
  expect(told('{"format":"leadlamp-journal/2"}\n')).toEqual(["1 record.newer-format"]);
  expect(told("[1]\n")).toEqual(["1 record.no-format"]);
});

test("[RC38] every bad line is named, and one is enough to refuse the whole", () => {
  expect(told(file(lineOf(reply), "{", lineOf(reply), "7", "", lineWith({ seq: 1.5 })))).toEqual([
    "3 record.not-json",
    "5 record.bad-entry",
    "6 record.blank-line",
    "7 record.bad-entry entry.seq",
  ]);
});

test("[RC38] at most a hundred problems are told", () => {
  expect(told(file(...Array.from({ length: 300 }, () => "{")))).toHaveLength(100);
});

test.each([
  ["no stream", { stream: undefined }, "entry.stream"],
  ["a stream of no kind", { stream: "boat:v" }, "entry.stream"],
  ["a stream with a slash", { stream: "visit:a/b" }, "entry.stream"],
  ["no nonce", { nonce: "" }, "entry.nonce"],
  ["number nought", { seq: 0 }, "entry.seq"],
  ["a number beyond what can be counted", { seq: 2 ** 53 }, "entry.seq"],
  ["a stamp without count", { at: { wall: 1 } }, "entry.at.count"],
  ["a stamp before 1970", { at: { wall: -1, count: 0 } }, "entry.at.wall"],
  ["a person with a blank", { by: "an na" }, "entry.by"],
  ["version nought", { v: 0 }, "entry.v"],
  ["something more", { more: 1 }, "entry.more"],
  ["no body", { body: undefined }, "entry.body"],
  ["a kind of another stream", { kind: "car.named", body: { name: "x", replaces: [] } }, "entry.kind"],
  [
    "a reply without field",
    { body: { key: { ...key("a"), field: undefined }, value: null, replaces: [] } },
    "body.key.field",
  ],
  [
    "a word reply without words",
    { body: { key: key("a"), value: { type: "words", words: [] }, replaces: [] } },
    "body.value.words",
  ],
  ["a value of no type", { body: { key: key("a"), value: { type: "smell" }, replaces: [] } }, "body.value.type"],
  [
    "a non-answer for one field",
    { body: { key: key("a"), value: { type: "non-answer", nonAnswer: "not-reached" }, replaces: [] } },
    "body.key.field",
  ],
  ["an answer for all fields", { body: { key: key("a", "*"), value: words("x"), replaces: [] } }, "body.key.field"],
  [
    "a replaced id that is none",
    { body: { key: key("a"), value: null, replaces: ["visit:v/w1/x/n"] } },
    "body.replaces[0]",
  ],
  ["an undo of another stream", { kind: "undo", body: { of: ["visit:w/w1/1/n"] } }, "body.of[0]"],
  ["an erasure of nothing", { kind: "erase", body: { of: [] } }, "body.of"],
])("[RC38] refused: %s", (_what, change, path) => {
  expect(told(file(lineWith(change)))).toEqual([`2 record.bad-entry ${path}`]);
});

test("[RC38] unknown kinds and newer versions are read, whatever plain body they have", () => {
  expect(told(file(lineWith({ kind: "from.later", body: { a: [1, null, { b: "c" }] } })))).toEqual(["read"]);
  expect(told(file(lineWith({ v: 2, body: "anything" })))).toEqual(["read"]);
});

test("[RC38] a body nested without end or reaching for a prototype is refused, of whatever kind", () => {
  const deep = "[".repeat(40) + "]".repeat(40);
  const line = lineWith({ kind: "from.later", body: 0 });
  expect(told(file(line.replace('"body":0', `"body":${deep}`)))[0]).toMatch(/^2 record.bad-entry entry.body/);
  expect(told(file(line.replace('"body":0', '"body":{"__proto__":{"x":1}}')))).toEqual([
    "2 record.bad-entry entry.body.__proto__",
  ]);
});

test("[RC5] a demo car in one's own visit, or the other way round, is refused", () => {
  const { drafts } = carAndVisit();
  const opened = drafts[1];
  if (!opened) throw new Error("no opening");
  const own = foreign(opened, "w1", 1);
  const body = JSON.parse(JSON.stringify(own.body));
  expect(told(file(JSON.stringify({ ...own, body: { ...body, car: "car:demo-x" } })))).toEqual(["2 record.demo-mixed"]);
  expect(told(file(JSON.stringify({ ...own, stream: "visit:demo-x" })))).toEqual(["2 record.demo-mixed"]);
  expect(told(file(JSON.stringify({ ...own, stream: "visit:demo-x", body: { ...body, car: "car:demo-y" } })))).toEqual([
    "read",
  ]);
  const car = foreign(draftCar(act(), "car:a", "A"), "w1", 1);
  expect(told(file(JSON.stringify({ ...car, kind: "car.same", body: { other: "car:demo-b" } })))).toEqual([
    "2 record.demo-mixed",
  ]);
});

test("a picture's hash is a hash", () => {
  const picture = foreign(pictureDraft("visit:v", "A".repeat(64)), fresh("w"), 1);
  expect(told(file(lineOf(picture)))).toEqual(["2 record.bad-entry body.blob"]);
});
