/** The message to the workshop: what was found, in the owner's words, with days; nothing it does not know. */
import { expect, test } from "vitest";
import { wholeVisit } from "../../../tests/support/handover-whole.js";
import { type HandoverInput, handover } from "../../core/report/index.js";
import { handoverWords } from "./handover-made.js";
import { workshopMessage } from "./workshop-message.js";

const message = (more: Partial<HandoverInput> = {}, noted: readonly string[] = []) =>
  workshopMessage(
    { model: handover({ ...wholeVisit(more), for: "owner" }), words: handoverWords() },
    { season: "wake-up", noted },
  );

test("it names car, occasion and day, the word for the owner, and every finding with what was noticed", () => {
  const whole = wholeVisit();
  const text = message({}, ["Squeaks when cold"]);
  expect(text.split("\n")[0]).toBe(`${whole.car.name}: Waking it up, 3 May 2031`);
  expect(text).toContain("Don't drive.");
  for (const { title } of whole.faults.slice(0, 8)) expect(text).toContain(`- ${title}`);
  for (const { words } of whole.complaints.filter(({ answer }) => answer?.is !== "not-met"))
    expect(text).toContain(`“${words}”`);
  expect(text).toContain("- Squeaks when cold");
});

test("a reading stands with that of last time and its day", () => {
  const [reading] = wholeVisit().readings;
  if (!reading) throw new Error("no reading");
  const typed = { ...reading, typed: ["1.6"], typedUnit: "bar", last: { on: "2030-11-28", value: "2.1", unit: "bar" } };
  expect(message({ readings: [typed] })).toContain(": 1.6 bar (28 Nov 2030: 2.1 bar)");
  expect(message({ readings: [{ ...typed, last: undefined }] })).not.toContain("(28 Nov 2030");
});

test("with nothing found it says so of what was looked at, counts what was not, and never calls the car safe", () => {
  const text = message({ faults: [], jobs: [], readings: [], complaints: [] });
  expect(text).toContain("Nothing was found in what I looked at.");
  expect(text).toMatch(/Not looked at: \d+ points?\./);
  expect(text).not.toMatch(/\bsafe\b|\bsound\b/i);
});

test("a long list is counted to its end, and the file is offered for the rest", () => {
  const [fault] = wholeVisit().faults;
  if (!fault) throw new Error("no finding");
  const faults = Array.from({ length: 11 }, (_, n) => ({ ...fault, fault: `${fault.fault}${n}`, title: `Worn ${n}` }));
  const text = message({ faults });
  expect(text.match(/- Worn/g)).toHaveLength(8);
  expect(text).toContain("and 3 more");
  expect(text).toContain("as a file");
});
