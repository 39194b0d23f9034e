// What was told last of a sheet under work: of the sheet as it is now, whatever is answered when.
import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import type { App } from "./app.js";
import { checkNext, lastChecked } from "./sheet-checking.js";
import type { WorkChecked } from "./sheet-tools.js";

const { sheet, common } = miniSheets();
const on = { bare: common, others: [] };
const changed = () => ({ draft: "d", sheet: { ...sheet }, on });

/** A checker whose answers come when they are let go. */
function checker() {
  const held: { readonly done: (outcome: WorkChecked | undefined) => void; readonly fail: (error: Error) => void }[] =
    [];
  const checkWork = () =>
    new Promise<WorkChecked | undefined>((done, fail) => {
      held.push({ done, fail });
    });
  const tools: App["sheetTools"] = async () => ({ checkWork }) as unknown as Awaited<ReturnType<App["sheetTools"]>>;
  return { held, tools };
}
const told = (says: string): WorkChecked => ({ told: [{ is: "note", code: "note", says }] });
const soon = () => new Promise((done) => setTimeout(done));

test("an old answer never stands over a newer one, whichever comes first", async () => {
  const { held, tools } = checker();
  const [older, newer] = [changed(), changed()];
  const asked = [checkNext(tools, older), checkNext(tools, newer)];
  await soon();
  held[1]?.done(told("newer"));
  await asked[1];
  held[0]?.done(told("older"));
  await asked[0];
  expect(lastChecked.value).toEqual({ draft: "d", sheet: newer.sheet, outcome: told("newer") });
});

test("one that was dropped for a newer one leaves what was told before", async () => {
  const { held, tools } = checker();
  const before = lastChecked.value;
  const asked = checkNext(tools, changed());
  await soon();
  held[0]?.done(undefined);
  await asked;
  expect(lastChecked.value).toBe(before);
});

test("the next screen waits for the check the last one asked for, and hears when it broke; then it is asked again", async () => {
  const { held, tools } = checker();
  const work = changed();
  const asked = [checkNext(tools, work), checkNext(tools, work)];
  await soon();
  expect(held.length).toBe(1);
  held[0]?.fail(new Error("broke"));
  for (const one of asked) await expect(one).rejects.toThrow("broke");
  const again = checkNext(tools, work);
  await soon();
  held[1]?.done(told("again"));
  await again;
  expect(lastChecked.value?.outcome).toEqual(told("again"));
});
