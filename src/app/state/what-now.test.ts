/** How far an owner has come after a look: nothing counts as done that was done before the last entry. */
import { expect, test } from "vitest";
import { bench, benchVisit, key, until, words } from "../../../tests/support/app-bench.js";
import type { CopyMade, VisitState } from "../../core/record/index.js";
import { reply } from "./reply-acts.js";
import { close } from "./visit-acts.js";
import { lastEntered, rememberSteps, stepsDone, stepsStand } from "./what-now.js";

async function looked(): Promise<{
  readonly state: () => VisitState;
  readonly on: ReturnType<typeof bench>;
  readonly visit: string;
}> {
  const on = bench();
  const { visit } = await benchVisit(on, "owner");
  await reply(on.journal, visit, key("hub.spin", "FL", "feel"), words("smooth"));
  const kept = on.journal.keptVisit(visit);
  await until(kept, ({ is }) => is === "open");
  const state = (): VisitState => {
    const opened = kept.value;
    if (opened.is !== "open") throw new Error("the bench's visit is open");
    return opened.state;
  };
  return { on, visit, state };
}
const copyAt = (at: number, ...streams: readonly string[]): CopyMade => ({
  at,
  streams: Object.fromEntries(streams.map((one) => [one, { mark: "m", last: {}, sum: "s" }])),
});

test("a step done before the last entry no longer counts; closing the visit is no news", async () => {
  const { on, visit, state } = await looked();
  const last = lastEntered(state());
  expect(stepsStand(state(), { message: last + 1, file: last - 1 }, undefined)).toEqual({
    message: "done",
    file: "before-last",
    dates: "open",
    copy: "open",
  });
  await close(on.journal, visit, {}, "1", on.phone.hash);
  expect(state().closed).toBeDefined();
  expect(lastEntered(state())).toBe(last);
  await reply(on.journal, visit, key("hub.spin", "FL", "feel"), words("rough"));
  expect(stepsStand(state(), { message: last + 1 }, undefined).message).toBe("before-last");
});

test("a copy counts only when it holds this visit and is younger than its last entry", async () => {
  const { visit, state } = await looked();
  const last = lastEntered(state());
  const copyOf = (copy: CopyMade) => stepsStand(state(), {}, copy).copy;
  expect(copyOf(copyAt(last + 1, visit))).toBe("done");
  expect(copyOf(copyAt(last + 1, "visit:another"))).toBe("open");
  expect(copyOf(copyAt(last - 1, visit))).toBe("before-last");
});

test("what this phone remembers is read back; anything else it finds there is nothing done", () => {
  const { remembered } = bench();
  rememberSteps(remembered, "visit:a", { message: 5, spring: "2027-04-01" });
  expect(stepsDone(remembered, "visit:a")).toEqual({ message: 5, spring: "2027-04-01" });
  expect(stepsDone(remembered, "visit:b")).toEqual({});
  remembered.put("leadlamp.what-now.visit:c", '{"message":"yes","spring":"soon"}');
  expect(stepsDone(remembered, "visit:c")).toEqual({});
  remembered.put("leadlamp.what-now.visit:d", "{");
  expect(stepsDone(remembered, "visit:d")).toEqual({});
});
