/** How long folding and keeping take: a visit of 500 replies, one more, and one kept on disk. */
import "fake-indexeddb/auto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { draftReply, draftVisit, type Entry, foldStep, foldVisit } from "../../src/core/record/index.js";
import { act, key, opening, words } from "../store/sample.js";
import { BROWSER_FLAGS, findBrowser } from "../support/browser.js";
import { buildPage } from "../support/build-page.js";
import type {} from "../support/pages/store-speed/main.js";
import { timeKeeping } from "./record-keeping.js";
import { type BenchRow, interleaved } from "./row.js";

const VISIT = "visit:bench";

/** A visit as a writer leaves it: every fifth point corrected once. */
function visitOf(replies: number): Entry[] {
  const entries: Entry[] = [{ ...draftVisit(act(), VISIT, opening("car:bench")), writer: "w", seq: 1 }];
  let state = foldVisit(entries);
  for (let i = 0; entries.length <= replies; i++) {
    for (const said of i % 5 === 0 ? ["smooth", "rough"] : ["smooth"]) {
      const entry: Entry = {
        ...draftReply(act(), state, key(`whl.p${i}`), words(said)),
        writer: "w",
        seq: entries.length + 1,
      };
      entries.push(entry);
      state = foldStep(state, [entry]);
    }
  }
  return entries;
}

function folding(replies: number): BenchRow {
  const entries = visitOf(replies);
  const state = foldVisit(entries);
  const next: Entry = {
    ...draftReply(act(), state, key("whl.next"), words("rough")),
    writer: "w",
    seq: entries.length + 1,
  };
  const undo: Entry = { ...next, kind: "undo", body: { of: [...state.ledger.log.keys()].slice(-1) } };
  return {
    what: `Folding a visit of ${replies} replies`,
    unit: "ms",
    figures: interleaved({
      "one reply more": () => foldStep(state, [next]),
      "one undo more": () => foldStep(state, [undo]),
      "the whole anew": () => foldVisit(entries),
    }),
  };
}

/** In a profile on the disk: a throw-away window keeps its data in memory and flushes nothing. */
async function inBrowser(rounds: number): Promise<Readonly<Record<string, number>>> {
  const built = await buildPage("store-speed");
  const profile = mkdtempSync(join(tmpdir(), "leadlamp-bench-"));
  const executablePath = findBrowser();
  const browser = await chromium.launchPersistentContext(profile, {
    args: [...BROWSER_FLAGS],
    ...(executablePath ? { executablePath } : {}),
  });
  try {
    const page = await browser.newPage();
    await page.goto(built.address);
    await page.waitForFunction(() => document.title === "Ready");
    return await page.evaluate((times) => window.timeKeeping(times), rounds);
  } finally {
    await browser.close();
    await built.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

export async function bench(): Promise<readonly BenchRow[]> {
  const goal = "one reply kept ≤ 1.2 × a bare strict put";
  return [
    folding(500),
    folding(2000),
    { what: "Keeping one reply in Chromium, 500 there already", unit: "ms", figures: await inBrowser(300), goal },
    { what: "The same on a stand-in for IndexedDB", unit: "ms", figures: await timeKeeping(300), goal },
  ];
}
