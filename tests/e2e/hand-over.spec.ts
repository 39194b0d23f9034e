/**
 * Handing a visit over, without a signal: the demo's open visit as its owner reads it, the pages read back by another
 * reader, the page file opened on its own, tables and days, all with what the screen says.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { DEMO_THIRD } from "../../src/app/demo/names.js";
import { paramOf } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/hand-over.js";
import { english } from "../../src/core/report/index.js";
import { expect, test } from "../support/harness.js";
import { plainText, readPdf } from "../support/read-pdf.js";
import { Walker } from "../support/walker.js";

type FileKind = "pdf" | "html" | "readings" | "work" | "unseen" | "dates";

/** Forms differ in blanks, in where a line ends and in the case of signal words: words are compared, not lines. */
const folded = (text: string): string => plainText(text).toLowerCase();

const wordsOf = (text: string): readonly string[] =>
  folded(text)
    .split(" ")
    .map((word) => word.replace(/[,.;:]+$/, ""));

const SIGNS: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'" };
const unescaped = (text: string): string => text.replace(/&(?:amp|lt|gt|quot|#39);/g, (sign) => SIGNS[sign] ?? sign);

test.use({ keepsApp: true });

test("a visit is handed over without a signal: every file says what the screen says", async ({
  page,
  site,
  context,
  browser,
}, info) => {
  const walker = new Walker(page, site.address);
  await walker.open("?demo");
  await page.waitForURL(/#\/car\//);
  await walker.wholeAppKept();
  await context.setOffline(true);
  await walker.open(`#/visit/${paramOf(DEMO_THIRD)}/hand-over`);

  const paper = page.getByRole("article", { name: t("hand-over.preview") });
  await expect(paper).toBeVisible();
  await expect(page.getByRole("link", { name: t("hand-over.open.visit") })).toBeVisible();
  // What wears is worked out last: its parts and days come a moment later.
  await expect(page.getByText(t("hand-over.open.wearing"))).toBeHidden();
  /** Every line of the screen's own pages, in the order they are read. */
  const lines = async (): Promise<readonly string[]> =>
    paper.evaluate((article) =>
      [...article.querySelectorAll("h2, h3, p, li, dt, dd, th, td, figcaption")]
        .filter((one) => !one.querySelector("p, li, dt, dd"))
        .map((one) => one.textContent ?? ""),
    );
  const owner = (await lines()).map(folded).filter((line) => line !== "");
  expect(owner.length).toBeGreaterThan(200);

  // After the first page each part lies shut behind its heading; on paper all of it stands open.
  const shut = paper.locator(".paper-chapter > [hidden]");
  const closed = await shut.count();
  expect(closed).toBeGreaterThan(8);
  const screens = (): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight / innerHeight);
  const lengths = [await screens()];
  await paper.getByRole("button", { name: english["readings.title"] }).click();
  await expect(paper.getByRole("table", { name: english["readings.title"] })).toBeVisible();
  await expect(shut).toHaveCount(closed - 1);
  const blank = (): Promise<number> =>
    shut.evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height === 0).length);
  expect(await blank()).toBe(closed - 1);
  await page.emulateMedia({ media: "print" });
  expect(await blank()).toBe(0);
  await page.emulateMedia({ media: "screen" });
  await paper.getByRole("button", { name: t("hand-over.chapter.open-all", { n: closed }) }).click();
  await expect(shut).toHaveCount(0);
  lengths.push(await screens());
  console.log(`a hand-over: ${lengths.map((one) => one.toFixed(1)).join(" screens folded, ")} open`);
  expect(lengths[0]).toBeLessThan(20);

  const take = async (kind: FileKind): Promise<{ readonly name: string; readonly bytes: Buffer }> => {
    await page
      .getByRole("button", { name: t(`hand-over.${kind}.says`) })
      .filter({ hasText: t(`hand-over.${kind}`) })
      .first()
      .click();
    const hand = page.getByRole("button", { name: t("hand-over.hand") });
    await expect(hand).toBeVisible({ timeout: 60_000 });
    const [download] = await Promise.all([page.waitForEvent("download"), hand.click()]);
    await page.getByRole("button", { name: t("app.close") }).click();
    return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
  };

  const pdf = await take("pdf");
  expect(pdf.name).toMatch(/^Brindlow Tarn 1992, hand-over, \d{4}-\d{2}-\d{2}\.pdf$/);
  const read = await readPdf(new Uint8Array(pdf.bytes));
  expect(read.title).toContain("Brindlow Tarn 1992");
  expect([read.language, read.links, [...read.faces.values()]]).toEqual(["en", [], [true, true]]);
  expect(read.pictures).toBeGreaterThanOrEqual(4);
  expect(read.texts.at(-1)).toContain(`Page ${read.pages} of ${read.pages}`);
  const lostIn = (text: string): readonly string[] => {
    const there = new Set(wordsOf(text));
    return [...new Set(owner.flatMap(wordsOf).filter((word) => !there.has(word)))];
  };
  expect(lostIn(read.texts.join(" "))).toEqual([]);

  const html = await take("html");
  const text = html.bytes.toString("utf8").replace(/<style>.*?<\/style>/s, "");
  expect(lostIn(unescaped(text.replace(/<[^>]+>/g, " ")))).toEqual([]);
  const saved = info.outputPath("page.html");
  writeFileSync(saved, html.bytes);
  const own = await browser.newContext();
  const other = await own.newPage();
  const asked: string[] = [];
  other.on("request", (request) => asked.push(request.url().slice(0, 40)));
  await other.goto(pathToFileURL(saved).href);
  await expect(other.getByRole("heading", { level: 1 })).toContainText("Brindlow Tarn 1992");
  expect(asked.filter((url) => !url.startsWith("data:") && !url.startsWith("file:"))).toEqual([]);
  expect(asked.filter((url) => url.startsWith("file:"))).toHaveLength(1);
  await own.close();

  for (const file of [pdf, html]) expect(file.bytes.toString("latin1")).not.toMatch(/Exif\0|GPS(Latitude|Info)/);

  const rows = (await take("readings")).bytes.toString("utf8").trimEnd().split("\r\n");
  expect(rows.length).toBeGreaterThan(20);
  expect(rows.some((row) => row.includes("whl.float"))).toBe(true);
  expect((await take("work")).bytes.toString("utf8")).toContain("New wheel bearing");
  // The pages count what little hangs on; the table names every point of it.
  const unseen = (await take("unseen")).bytes.toString("utf8").trimEnd().split("\r\n");
  expect(owner.join(" ")).toContain(`${unseen.length - 1} points in all`);
  const days = (await take("dates")).bytes.toString("utf8");
  expect(days.startsWith("BEGIN:VCALENDAR\r\n")).toBe(true);
  expect(days.match(/BEGIN:VEVENT/g)?.length).toBe(days.match(/END:VEVENT/g)?.length);

  await page.getByRole("radio", { name: t("hand-over.for.buyer") }).click();
  await expect(paper.getByText("Ottilie")).toHaveCount(0);
});
