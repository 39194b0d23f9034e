import { expect, test } from "vitest";
import { act, key, notReached, opening, reading, words } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { draftCar } from "./draft.js";
import { draftFact, draftLimit, draftPlace } from "./draft-car.js";
import { draftComplaint, draftDate, draftReply, draftVisit } from "./draft-visit.js";
import { figureOf } from "./looked.js";
import { toAssessInput } from "./to-assess.js";

const limit = { limit: "lim.float-unit", value: "0.10", unit: "mm", basis: "maker" } as const;

function carLog(): SampleLog {
  const log = new SampleLog("car:c");
  log.add(draftCar(act(), "car:c", "Little one"));
  return log;
}
function visitLog(stream = "visit:v"): SampleLog {
  const log = new SampleLog(stream);
  log.add(draftVisit(act(), stream, opening("car:c")));
  return log;
}

test("[RC36] an opened visit of a known car, as assessing takes it", () => {
  const car = carLog();
  for (const [fact, value] of [
    ["first-used", 1987],
    ["country", "gb"],
    ["seat", "right"],
    ["brakes", "inboard"],
    ["exposure", 1],
  ] as const) {
    car.add(draftFact(act(), car.car, fact, value));
  }
  car.add(draftLimit(act(), car.car, limit));
  const visit = visitLog();
  visit.add(draftComplaint(act(), visit.visit, { text: "hums when warm", complaint: "hum" }));
  visit.add(draftComplaint(act(), visit.visit, { text: "smells of petrol" }));
  const float = visit.add(draftReply(act(), visit.visit, key("whl.float", "play"), reading("0.22")));
  const earlier = visitLog("visit:u");
  earlier.add(draftDate(act(), earlier.visit, "2024-05-01T10:00+02:00"));
  const input = toAssessInput(car.car, visit.visit, [earlier.visit]);
  expect(input.ok && input.value).toEqual({
    at: "2026-02-03T09:30+01:00",
    odometer: { value: 61240, unit: "km" },
    who: "technician",
    car: {
      firstUsed: "1987",
      country: "gb",
      seat: "right",
      facts: { "first-used": 1987, country: "gb", seat: "right", brakes: "inboard", exposure: 1 },
      limits: [limit],
      places: [],
    },
    sheets: ["whl"],
    complaints: ["hum", "smells of petrol"],
    replies: [{ key: key("whl.float", "play"), value: reading("0.22"), id: float }],
    earlier: [{ at: "2024-05-01T10:00+02:00", odometer: { value: 61240, unit: "km" }, replies: [] }],
    exposure: 1,
  });
});

test("[RC36] where people differ everything that stands goes along", () => {
  const car = carLog();
  const seen = car.car;
  car.add(draftFact(act(), seen, "brakes", "inboard"), "w1");
  car.add(draftFact(act(), seen, "brakes", "outboard"), "w2");
  car.add(draftLimit(act(), seen, limit), "w1");
  car.add(draftLimit(act(), seen, { ...limit, value: "0.12" }), "w2");
  car.add(draftPlace(act(), seen, "FR", { remove: "FR" }), "w1");
  car.add(draftPlace(act(), seen, "FR", { add: { id: "FR", kind: "corner", in: "axle-F", at: [18, 80] } }), "w2");
  const visit = visitLog();
  const blank = visit.visit;
  visit.add(draftReply(act(), blank, key("whl.spin"), words("smooth")), "w1");
  visit.add(draftReply(act(), blank, key("whl.spin"), notReached), "w2");
  const input = toAssessInput(car.car, visit.visit, []);
  if (!input.ok) throw new Error("not opened");
  expect(input.value.car.facts["brakes"]).toBe("outboard");
  expect(input.value.car.otherFacts).toEqual({ brakes: ["inboard"] });
  expect(input.value.car.limits.map(({ value }) => value)).toEqual(["0.10", "0.12"]);
  expect(input.value.car.places).toEqual([{ add: { id: "FR", kind: "corner", in: "axle-F", at: [18, 80] } }]);
  expect(input.value.replies.map(({ key: { field } }) => field).sort()).toEqual(["*", "feel"]);
});

test("the limits in force when the visit was opened go before the car's book of today", () => {
  const car = carLog();
  car.add(draftLimit(act(), car.car, limit));
  const input = toAssessInput(car.car, visitLog().visit, [], [{ ...limit, value: "0.05" }]);
  expect(input.ok && input.value.car.limits.map(({ value }) => value)).toEqual(["0.05"]);
});

test("a visit nothing opened is a problem, not a guess", () => {
  const input = toAssessInput(carLog().car, new SampleLog().visit, []);
  expect(input.ok).toBe(false);
});

test.each([
  ["61240", 61240],
  ["61 240", 61240],
  ["61.240", 61240],
  ["61,240", 61240],
  ["61'240", 61240],
  ["161\u00a0240", 161240],
  ["1 161 240", 1161240],
  ["61240.5", 61240.5],
  ["61240,5", 61240.5],
  ["61.24", 61.24],
  ["61 24", undefined],
  ["1.161,240", undefined],
  ["about 60000", undefined],
  ["", undefined],
  ["-5", undefined],
])("the odometer text %j stands for %s", (value, figure) => {
  expect(figureOf({ value, unit: "km" })).toBe(figure);
});
