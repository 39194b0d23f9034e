/**
 * A visit with 60 pictures handed over in the built app: how long the pages and the page file take from the press, what
 * comes out, and the longest task the main thread pays meanwhile. Needs `npm run build` and a browser.
 * LEADLAMP_KEEP=FOLDER keeps both files to be looked at.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium, expect, type Page } from "@playwright/test";
import { DEMO_THIRD } from "../../src/app/demo/names.js";
import { type CameraFrom, cameraHref } from "../../src/app/state/picture-spot.js";
import { paramOf } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/hand-over.js";
import { serve } from "../../src/cli/serve.js";
import { BROWSER_FLAGS, findBrowser, NO_BROWSER } from "../support/browser.js";
import { readPdf } from "../support/read-pdf.js";
import { Walker } from "../support/walker.js";
import { cameraPicture } from "./report-pictures.js";
import type { Bench, BenchRow } from "./row.js";

/** On a finding, at a sound point, and pinned to nothing yet: twenty each. */
const SPOTS: readonly CameraFrom[] = [
  { at: "point", point: { state: "w8-off", place: "RR", point: "whl.float" } },
  { at: "point", point: { state: "w7-hang", place: "RR", point: "whl.listen" } },
  { at: "visit" },
];
const AT_EACH = 20;
const PICTURES = SPOTS.length * AT_EACH;

/** Longest one act of the browser is waited for, ms. */
const SLOWEST = 180_000;

const FILES = ["pdf", "html"] as const;
type File = (typeof FILES)[number];

interface Made {
  readonly ms: number;
  readonly longest: number;
  readonly blocked: number;
  readonly heap: number;
  readonly bytes: Buffer;
}

/** Opens an address; waits longer than the walker does, for a slow machine is no failure here. */
async function opened({ page, address }: Walker, hash: string): Promise<void> {
  await page.goto(address + hash);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
}

/** Adds pictures from the album at one spot, and waits until all of them lie in the record. */
async function addPictures(walker: Walker, from: CameraFrom, firstSeed: number): Promise<number> {
  const files = [];
  let bytes = 0;
  for (let made = 0; made < AT_EACH; made++) {
    const picture = await cameraPicture(walker.page, firstSeed + made);
    files.push(picture);
    bytes += picture.buffer.length;
  }
  await opened(walker, cameraHref(paramOf(DEMO_THIRD), from));
  const here = walker.page.getByText(/^\d+ pictures? here$/);
  const count = async (): Promise<number> =>
    (await here.isVisible()) ? Number.parseInt((await here.textContent()) ?? "", 10) : 0;
  const before = await count();
  await walker.fromAlbum(files);
  await expect.poll(count, { timeout: 300_000 }).toBe(before + AT_EACH);
  return bytes;
}

/** Presses one file of the hand-over screen, waits until it can be handed on, and takes it. */
async function make(page: Page, file: File): Promise<Made> {
  const button = page
    .getByRole("button", { name: t(`hand-over.${file}.says`) })
    .filter({ hasText: t(`hand-over.${file}`) })
    .first();
  const figures = await button.evaluate(async (pressed, hand) => {
    const tasks: number[] = [];
    const watch = new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration)));
    watch.observe({ type: "longtask" });
    const used = (): number => Number(Reflect.get(Reflect.get(performance, "memory") ?? {}, "usedJSHeapSize") ?? 0);
    let heap = used();
    const look = setInterval(() => {
      heap = Math.max(heap, used());
    }, 50);
    const began = performance.now();
    const ready = new Promise<number>((resolve) => {
      const seen = new MutationObserver(() => {
        if (![...document.querySelectorAll("button")].some(({ textContent }) => textContent?.includes(hand))) return;
        seen.disconnect();
        resolve(performance.now());
      });
      seen.observe(document.body, { childList: true, subtree: true, characterData: true });
    });
    if (pressed instanceof HTMLElement) pressed.click();
    const ms = (await ready) - began;
    heap = Math.max(heap, used());
    clearInterval(look);
    // A long task is told of only after it has ended.
    await new Promise((resolve) => setTimeout(resolve, 300));
    watch.disconnect();
    return { ms, longest: Math.max(0, ...tasks), blocked: tasks.reduce((all, one) => all + one, 0), heap };
  }, t("hand-over.hand"));
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: t("hand-over.hand") }).click(),
  ]);
  const bytes = readFileSync(await download.path());
  await page.getByRole("button", { name: t("app.close") }).click();
  const folder = process.env["LEADLAMP_KEEP"];
  if (folder) writeFileSync(join(folder, `report.${file}`), bytes);
  return { ...figures, bytes };
}

const byFile = (what: string, unit: BenchRow["unit"], of: (file: File) => number): BenchRow => ({
  what,
  unit,
  figures: { PDF: of("pdf"), HTML: of("html") },
});

export const bench: Bench = async () => {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(NO_BROWSER);
  const serving = await serve({ port: 0 });
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS, "--enable-precise-memory-info"] });
  try {
    const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    // A slow machine is no failure here.
    page.setDefaultTimeout(SLOWEST);
    // The runner's compiler names inner functions through a helper that the page does not have.
    await page.addInitScript("globalThis.__name = (named) => named");
    const walker = new Walker(page, serving.address);
    await opened(walker, "#/");
    await page.getByRole("button", { name: t("notice.read") }).click();
    await opened(walker, "?demo");
    await page.waitForURL(/#\/car\//, { waitUntil: "commit" });
    let given = 0;
    for (const [at, spot] of SPOTS.entries()) given += await addPictures(walker, spot, at * AT_EACH);
    await opened(walker, `#/visit/${paramOf(DEMO_THIRD)}/hand-over`);
    await page.getByRole("radio", { name: t("hand-over.for.technician") }).click();
    const made: Record<File, Made> = { pdf: await make(page, "pdf"), html: await make(page, "html") };
    const pdf = await readPdf(new Uint8Array(made.pdf.bytes));
    return [
      {
        ...byFile(
          `${PICTURES} pictures handed over, from the press until the file is ready`,
          "ms",
          (of) => made[of].ms,
        ),
        note: `Pictures as chosen from the album: ${Math.round(given / PICTURES / 1000)} kB each on average.`,
      },
      byFile("longest main-thread task meanwhile (0: none over 50 ms)", "ms", (of) => made[of].longest),
      byFile("all main-thread tasks over 50 ms meanwhile", "ms", (of) => made[of].blocked),
      byFile("most of the page's own memory meanwhile (workers not counted)", "B", (of) => made[of].heap),
      byFile("size of the file", "B", (of) => made[of].bytes.length),
      { what: "pages and pictures of the PDF", unit: "", figures: { pages: pdf.pages, pictures: pdf.pictures } },
    ];
  } finally {
    await browser.close();
    await serving.close();
  }
};
