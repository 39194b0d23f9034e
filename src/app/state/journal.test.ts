import { expect, test } from "vitest";
import { bench, benchVisit, key, until, words } from "../../../tests/support/app-bench.js";
import { keyText } from "../../core/terms/index.js";
import { reply } from "./reply-acts.js";
import { note } from "./visit-acts.js";

const spin = key("hub.spin", "FR", "feel");
const shownReply = (on: ReturnType<typeof bench>, visit: string) => {
  const opened = on.journal.visit(visit).value;
  return opened.is === "open" ? opened.state.replies.get(keyText(spin))?.standing.map(({ value }) => value) : undefined;
};

test("a reply is told as kept only after the store has it, and stands then", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  const before = on.kept.length;
  expect(await reply(on.journal, visit, spin, words("rough"))).toBe(true);
  expect(on.kept.slice(before).map(({ kind }) => kind)).toEqual(["reply"]);
  expect(shownReply(on, visit)).toEqual([words("rough")]);
});

test("two quick presses are one change of mind, not two replies that differ", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  await Promise.all([reply(on.journal, visit, spin, words("rough")), reply(on.journal, visit, spin, words("smooth"))]);
  expect(shownReply(on, visit)).toEqual([words("smooth")]);
});

test("a refused reply stays on the screen as not kept, and is kept once by Again", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  on.refuse = true;
  expect(await reply(on.journal, visit, spin, words("rough"))).toBe(false);
  expect(shownReply(on, visit)).toEqual([words("rough")]);
  expect(on.journal.keptVisit(visit).value).toMatchObject({ is: "open", state: { replies: new Map() } });
  expect(on.journal.unkept.value).toMatchObject([{ what: "a-reply", problem: { code: "record.store-full" } }]);

  on.refuse = false;
  await on.journal.again();
  await on.journal.again();
  expect(on.journal.unkept.value).toEqual([]);
  expect(on.kept.filter(({ kind }) => kind === "reply")).toHaveLength(1);
  expect(shownReply(on, visit)).toEqual([words("rough")]);
});

test("a refused reply that is answered anew does not come back to contradict it", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  on.refuse = true;
  await reply(on.journal, visit, spin, words("rough"));
  await note(on.journal, visit, "torch lost", {});
  on.refuse = false;
  await reply(on.journal, visit, spin, words("smooth"));
  await on.journal.again();
  expect(shownReply(on, visit)).toEqual([words("smooth")]);
  const opened = on.journal.visit(visit).value;
  expect(opened.is === "open" && opened.state.notes.map(({ value }) => value.text)).toEqual(["torch lost"]);
});

test("what another window keeps is folded in", async () => {
  const first = bench();
  const { visit } = await benchVisit(first);
  const second = bench(first.world, { id: "p2", name: "Jorin" });
  await until(second.journal.visit(visit), ({ is }) => is === "open");
  await reply(first.journal, visit, spin, words("tight"));
  await until(second.journal.visit(visit), (now) => now.is === "open" && now.state.replies.size > 0);
  expect(shownReply(second, visit)).toEqual([words("tight")]);
});

test("a visit says who looked: the person stands in its own stream", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const opened = await until(on.journal.visit(visit), ({ is }) => is === "open");
  expect(opened.is === "open" && opened.state.people.get("p1")?.at(-1)?.value.name).toBe("Ines");
});

test("a stream nobody began is missing, not empty", async () => {
  const on = bench();
  const found = await until(on.journal.visit("visit:never"), ({ is }) => is !== "opening");
  expect(found.is).toBe("missing");
});
