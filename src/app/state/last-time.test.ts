/** What was said last time: the newest real answer, and the one a condition holds against this point. */
import { expect, test } from "vitest";
import { key, miniKnowledge, words } from "../../../tests/support/app-bench.js";
import { foldVisit, type VisitState } from "../../core/record/index.js";
import { keyText, type ReplyValue } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { heldAgainst, lastTime } from "./last-time.js";

type Said = readonly (readonly [point: string, field: string, ...values: readonly ReplyValue[]])[];

function visitOf(on: string, said: Said): VisitState {
  const at = { wall: Date.parse(on), count: 0 };
  const slots = said.map(([point, field, ...values]) => {
    const of = key(point, "FL", field);
    const standing = values.map((value, index) => ({ id: `${on} ${point} ${index}`, at, by: "p", value }));
    return [keyText(of), { key: of, standing, differ: values.length > 1 }] as const;
  });
  const empty = foldVisit([]);
  return { ...empty, on: [{ id: on, at, by: "p", value: on }], replies: new Map(slots) };
}

const at = { point: "hub.spin", place: "FL", state: "w7-hang" };
const told = (earlier: readonly VisitState[], known: Knowledge = miniKnowledge()) =>
  lastTime({ known, who: "technician", earlier }, at).map(({ says }) => says);

const AUTUMN = "2026-11-28T10:00:00+00:00";
const SPRING = "2027-04-24T10:00:00+00:00";
const not = (nonAnswer: "not-reached" | "not-fitted"): ReplyValue => ({ type: "non-answer", nonAnswer });

test("words said last time stand with their day; the newest visit that has an answer counts", () => {
  const old = visitOf("2025-11-01T10:00:00+00:00", [["hub.spin", "feel", words("rough")]]);
  const autumn = visitOf(AUTUMN, [["hub.spin", "feel", words("smooth")]]);
  expect(told([old, autumn])).toEqual(["Last time, 28 Nov 2026: smooth"]);
  expect(told([])).toEqual([]);
});

test("who could not reach it is passed over for an older answer; what was not fitted says so", () => {
  const autumn = visitOf(AUTUMN, [["hub.spin", "feel", words("smooth")]]);
  expect(told([autumn, visitOf(SPRING, [["hub.spin", "*", not("not-reached")]])])).toEqual([
    "Last time, 28 Nov 2026: smooth",
  ]);
  expect(told([autumn, visitOf(SPRING, [["hub.spin", "*", not("not-fitted")]])])).toEqual([
    "Last time, 24 Apr 2027: Not fitted",
  ]);
});

test("where two said different things both are told", () => {
  const both = visitOf(AUTUMN, [["hub.spin", "feel", words("smooth"), words("rough")]]);
  expect(told([both])).toEqual(["Last time, 28 Nov 2026: smooth or rough"]);
});

/** The small sheet with one more check that holds one point against another at its last visit. */
function withTrip(trip: string): Knowledge {
  const known = miniKnowledge();
  const [hub] = known.sheets;
  if (!hub) throw new Error("the small sheet is there");
  const gate = { id: "gate.hub", guards: "w7-hang", starts: "cleared" as const, trips: [trip], cautions: [] };
  return { ...known, sheets: [{ ...hub, sheet: { ...hub.sheet, gates: [gate] } }] };
}

test("what was put in is told where what came out is answered, because a check holds one against the other", () => {
  const known = withTrip("hub.spin == last(hub.float)");
  const autumn = visitOf(AUTUMN, [["hub.float", "play", { type: "reading", values: ["0.25"], unit: "mm" }]]);
  expect(told([autumn], known)).toEqual(["Last time, 28 Nov 2026, Float: 0.25 mm"]);
  const spin = known.points.get("hub.spin")?.point;
  expect(spin && heldAgainst(known, spin).map(({ point }) => point.id)).toEqual(["hub.float"]);
});

test("a point named in the same condition without being compared is not told", () => {
  const known = withTrip('hub.spin == "smooth" && hub.noise > last(hub.float)');
  const spin = known.points.get("hub.spin")?.point;
  expect(spin && heldAgainst(known, spin)).toEqual([]);
});
