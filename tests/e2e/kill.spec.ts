/**
 * The browser is killed outright at random moments while replies are pressed, without a network. Whatever the app had
 * acknowledged must be there on reopening, and the app must be where it was. LEADLAMP_KILLS=100 for the long run,
 * LEADLAMP_SEED to repeat one.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import type { Page } from "@playwright/test";
import { serve } from "../../src/cli/serve.js";
import { type Chance, chance } from "../support/chance.js";
import { expect, bare as test } from "../support/harness.js";
import { type Acknowledged, acknowledged, inDatabase, logKept, settingsInDatabase } from "../support/kept-log.js";
import { type Killable, openKillable } from "../support/killable.js";
import { watchOffences } from "../support/offences.js";
import { onward, Walker } from "../support/walker.js";

const KILLS = Number(process.env["LEADLAMP_KILLS"] ?? 5);
const SEED = Number(process.env["LEADLAMP_SEED"] ?? 20261125);
/** The app is busy keeping for up to this long before the kill. */
const LONGEST_LIFE_MS = 2_000;
/** So many tenths of a second a life is waited for until it has kept its first reply. */
const MOST_WAITS = 100;

/** Presses replies and walks on, as fast as the app lets it, until the browser is gone. */
async function pressUntilKilled(page: Page, luck: Chance): Promise<void> {
  const walker = new Walker(page, "");
  const next = onward(page);
  const wishes = { timeout: 500, force: true, noWaitAfter: true };
  for (;;) {
    const reply = walker.replies().nth(luck.whole(0, 4));
    await reply.click(wishes).catch(() => undefined);
    if (luck.whole(0, 3) === 0) await next.click(wishes).catch(() => undefined);
    if (page.isClosed()) return;
  }
}

const repliesIn = (all: readonly Acknowledged[]): number => all.filter(({ kind }) => kind === "reply").length;

/** Every address of the app a page shows, in order. */
function followPlaces(page: Page): string[] {
  const places: string[] = [];
  page.on("framenavigated", (frame) => places.push(new URL(frame.url()).hash));
  return places;
}

test(`nothing acknowledged is lost over ${KILLS} kills (seed ${SEED})`, async () => {
  test.setTimeout(60_000 + KILLS * 40_000);
  const luck = chance(SEED);
  const profile = mkdtempSync(join(tmpdir(), "leadlamp-kill-"));
  const log = join(profile, "kept.jsonl");
  const serving = await serve({ port: 0 });
  const { address } = serving;
  let open: Killable | undefined;

  const reopen = async (): Promise<Walker> => {
    open = await openKillable(profile);
    await logKept(open.context, log);
    return new Walker(open.page, address);
  };

  try {
    const first = await reopen();
    await first.open();
    await first.wholeAppKept();
    await first.newCar("Killed car");
    await first.newVisit();
    let places = followPlaces(first.page);
    await first.firstReply();
    const visit = first.visit();
    await open?.close();
    // From here on there is no server at all: the phone is on its own.
    await serving.close();

    for (let kill = 1; kill <= KILLS; kill++) {
      const walker = await reopen();
      const offences = await watchOffences(walker.page.context(), new URL(address).origin);
      // As the phone opens it: at its start address, not where it was.
      await walker.open("");
      const before = acknowledged(log);
      const there = await inDatabase(walker.page);
      const missing = before.filter(({ id }) => !there.ids.has(id));
      expect(missing, `acknowledged before kill ${kill} and gone`).toEqual([]);

      // Same place: the point of the last reply kept, or one the app went on to after it.
      await expect(walker.page).toHaveURL(/\/round\/[^/]+\/[^/]+\/[^/]+$/);
      const here = new URL(walker.page.url()).hash;
      const lastReply = `#/visit/${visit}/round/${there.newestReply}`;
      const since = [lastReply, ...places.slice(places.lastIndexOf(lastReply) + 1)];
      expect(since, `reopened elsewhere after kill ${kill - 1}`).toContain(here);
      places = followPlaces(walker.page);
      places.push(here);

      const pressing = pressUntilKilled(walker.page, luck).catch(() => undefined);
      // However busy the machine is, a life keeps something before it ends, unless it stands before a shut check.
      const had = repliesIn(before);
      for (let waits = 0; waits < MOST_WAITS && repliesIn(acknowledged(log)) === had; waits++) await pause(100);
      await pause(luck.whole(20, LONGEST_LIFE_MS));
      expect(offences.seen).toEqual([]);
      await open?.kill();
      await pressing;
    }

    const last = await reopen();
    await last.open("");
    const there = await inDatabase(last.page);
    const all = acknowledged(log);
    expect(all.filter(({ id }) => !there.ids.has(id))).toEqual([]);
    const replies = repliesIn(all);
    console.log(
      `${KILLS} kills, ${replies} replies acknowledged, 0 lost, ${there.ids.size - all.length} kept without a word of it getting out`,
    );
    expect(replies).toBeGreaterThan(KILLS);
    await open?.close();
  } finally {
    await open?.kill().catch(() => undefined);
    await serving.close().catch(() => undefined);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});

test("walked on without a reply and killed, the app comes back to where one stood", async () => {
  const profile = mkdtempSync(join(tmpdir(), "leadlamp-stood-"));
  const serving = await serve({ port: 0 });
  let open: Killable | undefined;
  try {
    open = await openKillable(profile);
    const before = new Walker(open.page, serving.address);
    await before.newCar("Walked round");
    await before.newVisit();
    const answered = await before.firstReply();
    await before.wentOn(answered);
    await before.goOn();
    await before.goOn();
    const stood = new URL(before.page.url()).hash;
    const [, , , , state, place, point] = stood.split("/").map(decodeURIComponent);
    const remembered = () => settingsInDatabase(before.page, "leadlamp.at.");
    await expect.poll(remembered).toEqual([expect.stringContaining(`${state} ${place} ${point}`)]);
    await open.kill();

    open = await openKillable(profile);
    const after = new Walker(open.page, serving.address);
    await after.open(`#/visit/${stood.split("/")[2]}/round`);
    await expect.poll(() => new URL(after.page.url()).hash).toBe(stood);
    await open.close();
  } finally {
    await open?.kill().catch(() => undefined);
    await serving.close().catch(() => undefined);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
