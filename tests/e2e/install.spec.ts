/** The built app as a thing to install: what the browser itself says about it, and the manifest's own promises. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { BROWSER_FLAGS, findBrowser } from "../support/browser.js";
import { expect, test } from "../support/harness.js";

test("the browser has nothing to say against installing it", async ({ site }) => {
  // Installability is not judged in a private window, so this one has a profile.
  const profile = mkdtempSync(join(tmpdir(), "leadlamp-install-"));
  const executablePath = findBrowser();
  const context = await chromium.launchPersistentContext(profile, {
    args: [...BROWSER_FLAGS],
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  try {
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(site.address);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    const session = await context.newCDPSession(page);
    const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
    expect(installabilityErrors).toEqual([]);
    const { errors, data } = await session.send("Page.getAppManifest");
    expect(errors).toEqual([]);
    expect(JSON.parse(data ?? "{}")).toMatchObject({ name: "Leadlamp", display: "standalone", start_url: "./" });
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
});

test("every picture the manifest names is there and has the size it claims", async ({ page, site }) => {
  await page.goto(site.address);
  const manifest: {
    icons: { src: string; sizes: string; type: string }[];
    screenshots?: { src: string; sizes: string; type: string }[];
  } = await (await page.request.get(`${site.address}leadlamp.webmanifest`)).json();
  const pictures = [...manifest.icons, ...(manifest.screenshots ?? [])].filter(({ type }) => type === "image/png");
  expect(pictures.length).toBeGreaterThan(2);
  for (const { src, sizes, type } of pictures) {
    const answer = await page.request.get(site.address + src);
    expect(answer.headers()["content-type"]).toBe(type);
    const bytes = await answer.body();
    // Width and height stand in a PNG's first chunk.
    expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
  }
});
