/** Complaints of earlier visits: one that can't be read is counted, so that its complaints are not taken for answered. */
import { signal } from "@preact/signals";
import { expect, test } from "vitest";
import { foldVisit, type Summary, type VisitState } from "../../core/record/index.js";
import { problem } from "../../core/terms/index.js";
import { earlierUnread } from "./heard.js";
import type { Journal, Opened } from "./journal.js";

const CAR = "car:c";
const visit = (stream: string, on: string): VisitState => ({
  ...foldVisit([]),
  stream,
  streams: [stream],
  on: [{ id: on, value: on, at: { wall: 1, count: 0 }, by: "p" }],
  opened: { id: on, at: { wall: 1, count: 0 }, by: "p", value: { car: CAR } } as NonNullable<VisitState["opened"]>,
});
const summary = (stream: string, on: string, car = CAR) => ({ of: "visit", stream, on, car }) as Summary;

test("earlier visits of this car that can't be read are counted, and no others", () => {
  const stands: Readonly<Record<string, Opened<VisitState>["is"]>> = {
    "visit:a": "trouble",
    "visit:b": "open",
    "visit:other": "trouble",
    "visit:later": "trouble",
  };
  const journal = {
    summaries: signal([
      summary("visit:a", "2025-03-01"),
      summary("visit:b", "2025-09-01"),
      summary("visit:other", "2025-03-01", "car:d"),
      summary("visit:later", "2027-01-01"),
      summary("visit:own", "2026-02-03"),
    ]),
    keptVisit: (stream: string) =>
      signal(
        stands[stream] === "trouble"
          ? { is: "trouble", problem: problem("store.failed", {}, {}) }
          : { is: "open", state: visit(stream, "2025-09-01") },
      ),
  } as unknown as Pick<Journal, "summaries" | "keptVisit">;
  expect(earlierUnread(journal, visit("visit:own", "2026-02-03"))).toBe(1);
});
