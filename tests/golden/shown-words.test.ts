/**
 * The shipped sheets as the screens tell them: whatever is replied, no id ever stands where words should. Every gate in
 * each of its states, every rule, every complaint, every point that opens or settles. Judges no wording.
 */
import { expect, test } from "vitest";
import type { Telling } from "../../src/app/state/because.js";
import { cautionLines, gateLine } from "../../src/app/state/cautions-view.js";
import { complaintLines } from "../../src/app/state/complaint-lines.js";
import { findingsView, findingView } from "../../src/app/state/findings-view.js";
import { jobSays } from "../../src/app/state/job-words.js";
import { becauseSays, faultSays, type Knowledge, knowledgeOf } from "../../src/app/state/knowledge.js";
import { isTextKey } from "../../src/app/texts/index.js";
import { t } from "../../src/app/texts/round.js";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { type Assessment, prepare, reassess, type StandingReply, start } from "../../src/core/assess/index.js";
import { foldVisit } from "../../src/core/record/index.js";
import type { Field } from "../../src/core/sheet/run.js";
import { AUDIENCES, type ReplyValue } from "../../src/core/terms/index.js";
import { TRADE_WORK } from "../../src/core/trade/index.js";
import { visit } from "../support/small-car.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const lists = result.value;
const english = <Texts>(texts: Readonly<Record<string, Texts>>): Texts => {
  const found = texts["en"];
  if (!found) throw new Error("the shipped sheets speak English");
  return found;
};
const words = english(lists.commonWithTexts.texts);
const listed = lists.commonWithTexts.complaints;
const known: Knowledge = {
  ...knowledgeOf(
    lists.common.common,
    words,
    lists.sheets.map(({ built, sheet }) => ({ sheet: built.sheet, texts: english(sheet.texts) })),
  ),
  complaints: { listed, texts: words.complaints },
};
const engine = prepare(
  lists.common,
  lists.sheets.map(({ built }) => built),
  TRADE_WORK,
);
const complaints = listed.map(({ id }) => id);
/** Carried on from: what it comes to is what assessing from nothing comes to (tests/property/assess.test.ts). */
const untouched = start(engine, visit([], { sheets: lists.sheets.map(({ sheet }) => sheet.id), complaints }));
const gates = [...known.gates.values()];

/** One of the replies a field takes, the n-th in turn; readings from far below their window to far above it. */
function anyReply(field: Field, n: number): ReplyValue {
  if ("words" in field) return { type: "words", words: [field.words[n % field.words.length] ?? ""] };
  if ("quantity" in field) {
    const [low, high] = field.window ?? [0, 10];
    return { type: "reading", values: [String(low + ((high - low) * (n % 5)) / 4)], unit: field.unit };
  }
  if ("count" in field) return { type: "count", count: n % 2 === 0 ? field.count.from : field.count.to };
  return "yes" in field ? { type: "yes", yes: n % 2 === 0 } : { type: "date-code", text: "1218" };
}

/** The n-th way of answering everything that is asked, `layers` times: what replies open is answered too. */
function judged(n: number, layers: number): Assessment {
  let replies: readonly StandingReply[] = [];
  let session = untouched;
  for (let layer = 0; layer < layers; layer++) {
    const said = new Set(replies.map(({ key }) => `${key.point} ${key.place}`));
    const more = session.assessment.asked
      .flatMap((one) => [one.point, ...one.with].map((point) => ({ ...one, point })))
      .filter(({ point, place }, index) => !said.has(`${point} ${place}`) && (index + n) % 7 !== 0)
      .flatMap(({ point, place, state }, index) =>
        Object.entries(known.points.get(point)?.point.fields ?? {}).map(
          ([name, field]): StandingReply => ({
            key: { point, place, state, field: name },
            value: anyReply(field, n * 3 + index * 5),
            id: `${layer}/${point}/${place}/${name}`,
          }),
        ),
      );
    replies = [...replies, ...more];
    session = reassess(session, { ...session.input, replies });
  }
  return session.assessment;
}

/** What tells ids from words: `whl.spin`, `wheel_fixing`, `w4-road`, `FL`, `axle-F`. */
const RAW = /[a-z]\.[a-z]|_|\bw\d-[a-z]|\b[FR][LR]\b|\b(axle|side)-[A-Z]/;
/** Parts of what a screen is given that it never shows. */
const NOT_SHOWN = new Set(["id", "href", "fault", "place", "mark", "jobs", "cautions", "state", "signal", "measureAgain"]);

function shown(given: unknown): readonly string[] {
  if (typeof given === "string") return [given];
  if (typeof given !== "object" || given === null) return [];
  return Object.entries(given).flatMap(([key, value]) => (NOT_SHOWN.has(key) ? [] : shown(value)));
}
const raw = (given: unknown): readonly string[] => shown(given).filter((text) => RAW.test(text) || text.trim() === "");
const tellings = AUDIENCES.map((who): Telling => ({ known, who, visit: "v", car: "c", pictures: [] }));
const WAYS = Array.from({ length: 6 }, (_, n) => n);

test("every gate has its words in each of its states, names the sheets it lacks and what it guards", () => {
  expect(gates.length).toBeGreaterThan(0);
  const open = judged(0, 0);
  expect(open.gates.map(({ gate }) => gate).sort()).toEqual(gates.map(({ id }) => id).sort());
  for (const telling of tellings) {
    for (const gate of open.gates) {
      for (const state of ["tripped", "not cleared", "cleared"] as const) {
        const line = gateLine(telling, { ...gate, state }, { notes: [], told: [] });
        const told = { ...line, says: state === "cleared" ? "nothing to say" : line.says };
        expect(raw([told, line.cautions.map(({ not, why, can, todo }) => [not, why, can, todo])]), gate.gate).toEqual([]);
        expect(line.guards, gate.gate).not.toBe(gate.guards);
      }
      for (const sheet of gate.missingSheets) expect(isTextKey(`sheet-id.${sheet}`), sheet).toBe(true);
    }
  }
});

test("every rule, job and complaint is told in words to everyone who looks", () => {
  expect(known.rules.size).toBeGreaterThan(0);
  for (const telling of tellings) {
    const rules = [...known.rules.keys()].map((rule) => becauseSays(known, rule, telling.who));
    const jobs = [...known.jobs.keys()].map((job) => Object.values(jobSays(known, job, telling.who)));
    const said = complaints.map((id) => ({ id, at: { wall: 1, count: 0 }, by: "p", value: { replaces: [], text: "…", complaint: id } }));
    const lines = complaintLines(telling, { ...foldVisit([]), complaints: said }, judged(0, 0).suggested);
    expect(raw([rules, jobs, lines])).toEqual([]);
    expect(lines.some(({ first }) => first.length > 0)).toBe(true);
  }
});

test("an owner is told a fault in words meant for owners, the rule's own or else the fault's", () => {
  const texts = known.sheets.map((one) => one.texts);
  const ownersOnly = [...known.rules.values()].flatMap(({ id, fault }) => {
    const ofFault = texts.map(({ faults }) => faults?.[fault ?? ""]?.owner).find((owner) => owner !== undefined);
    const ofRule = texts.map(({ rules }) => rules?.[id]).find((own) => own !== undefined);
    if (fault === undefined || ofFault === undefined || ofRule === undefined || ofRule.owner !== undefined) return [];
    return [{ id, told: faultSays(known, fault, [id], "owner").says, ofFault }];
  });
  expect(ownersOnly.length).toBeGreaterThan(0);
  expect(ownersOnly.filter(({ told, ofFault }) => told !== ofFault)).toEqual([]);
});

test("that several replies may stand together the round says by itself: no point says it again", () => {
  const points = [...known.points.values()];
  expect(points.some(({ point }) => Object.values(point.fields).some((field) => "words" in field && field.several))).toBe(
    true,
  );
  const again = points.filter(({ text }) => text.how?.includes(t("round.several")));
  expect(again.map(({ point }) => point.id)).toEqual([]);
});

test("whatever is replied, findings, their because, gates, cautions and what opens or settles are told in words", () => {
  const counts = { faults: 0, settle: 0, opened: 0 };
  for (const judgement of WAYS.map((n) => judged(n, 3))) {
    for (const telling of tellings) {
      const faults = judgement.faults.map(({ fault, place }) => findingView(telling, judgement, fault, place));
      const opened = judgement.asked.flatMap((one) => one.openedBy.map((id) => becauseSays(known, id, telling.who)));
      const lines = judgement.gates.map((gate) => gateLine(telling, gate, { notes: [], told: [] }));
      const noted = lines.map(({ says, ...line }) => (says === "" ? line : { says, ...line }));
      const cautions = cautionLines(known, judgement.cautions, []);
      const view = findingsView(telling, judgement);
      expect(raw([view, faults, opened, noted, cautions])).toEqual([]);
      counts.faults += faults.length;
      counts.settle += view.settle.length;
      counts.opened += opened.length;
    }
  }
  for (const [what, count] of Object.entries(counts)) expect(count, what).toBeGreaterThan(0);
}, 300_000);
