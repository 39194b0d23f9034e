/** Keeping pictures in a real browser: size, turning, tags, hashes, what cannot be read, and a free main thread. */
import { type BuiltPage, buildPage } from "../support/build-page.js";
import { CAMERA_MAKER, CAMERA_SERIAL } from "../support/exif.js";
import { expect, bare as test } from "../support/harness.js";
import type { PictureActs } from "../support/pages/pictures/main.js";

declare global {
  var pictures: PictureActs;
}

const UPRIGHT = { "top left": "red", "top right": "green", "bottom left": "blue", "bottom right": "yellow" };
/** Stored quarters after a quarter turn clockwise (EXIF 6) and anticlockwise (8), and half a turn (3). */
const TURNED: Readonly<Record<number, Readonly<Record<string, string>>>> = {
  1: UPRIGHT,
  3: { "top left": "yellow", "top right": "blue", "bottom left": "green", "bottom right": "red" },
  6: { "top left": "blue", "top right": "red", "bottom left": "yellow", "bottom right": "green" },
  8: { "top left": "green", "top right": "yellow", "bottom left": "red", "bottom right": "blue" },
  5: { "top left": "red", "top right": "blue", "bottom left": "green", "bottom right": "yellow" },
};

// In one piece, so that the page is built once.
test.describe.configure({ mode: "default" });

let built: BuiltPage;
test.beforeAll(async () => {
  built = await buildPage("pictures");
});
test.afterAll(() => built.close());

test.beforeEach(async ({ page }) => {
  await page.goto(built.address);
  await expect(page).toHaveTitle("Ready");
});

test("a 12-megapixel picture from a turned camera is kept small, upright once, without its tags", async ({ page }) => {
  const kept = await page.evaluate(() => pictures.camera(4032, 3024, 6));
  expect(kept).toMatchObject({ kind: "picture", sourceHasTags: true, hashesRight: true });
  if (!kept.picture || !kept.thumb) throw new Error("no picture");
  expect(kept.picture).toMatchObject({ type: "image/jpeg", width: 1536, height: 2048 });
  expect(kept.thumb).toMatchObject({ type: "image/jpeg", width: 240, height: 320 });
  expect(kept.quarters).toEqual(TURNED[6]);
  expect(kept.thumbQuarters).toEqual(TURNED[6]);
  for (const text of [kept.picture.text, kept.thumb.text]) {
    for (const tag of ["Exif", "GPS", CAMERA_MAKER, CAMERA_SERIAL]) expect(text.includes(tag)).toBe(false);
  }
  expect(kept.picture.bytes).toBeLessThan(1_500_000);
});

for (const orientation of [1, 3, 5, 8]) {
  test(`orientation ${orientation} comes out upright once`, async ({ page }) => {
    const kept = await page.evaluate((turn) => pictures.camera(1200, 800, turn), orientation);
    expect(kept.quarters).toEqual(TURNED[orientation]);
    const lying = orientation >= 5;
    expect(kept.picture).toMatchObject(lying ? { width: 800, height: 1200 } : { width: 1200, height: 800 });
  });
}

test("HEIC that this browser cannot read is kept as it came and says so", async ({ page }) => {
  const heic = [0, 0, 0, 24, ...Buffer.from("ftypheic"), 0, 0, 0, 0, ...Buffer.from("mif1heic"), 1, 2, 3, 4];
  const kept = await page.evaluate((bytes) => pictures.bytes(bytes, ""), heic);
  expect(kept).toMatchObject({ kind: "original", why: "heic", type: "image/heic", bytes: heic });
});

test("a damaged JPEG and a file that is no picture are kept as they came, each with its reason", async ({ page }) => {
  const damaged = [0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2];
  expect(await page.evaluate((bytes) => pictures.bytes(bytes, "image/png"), damaged)).toMatchObject({
    kind: "original",
    why: "cannot-read",
    type: "image/jpeg",
    bytes: damaged,
  });
  const text = [...Buffer.from("not a picture")];
  expect(await page.evaluate((bytes) => pictures.bytes(bytes, "text/plain"), text)).toMatchObject({
    kind: "original",
    why: "no-picture",
    type: "text/plain",
    bytes: text,
  });
});

test("an SVG is never drawn: it is a document", async ({ page }) => {
  const svg = [
    ...Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect width="9" height="9"/></svg>'),
  ];
  expect(await page.evaluate((bytes) => pictures.bytes(bytes, "image/svg+xml"), svg)).toMatchObject({
    kind: "original",
    why: "no-picture",
  });
});

test("a picture that really is black is a picture", async ({ page }) => {
  expect(await page.evaluate(() => pictures.black())).toBe("picture");
});

test("what is transparent becomes white, as on paper", async ({ page }) => {
  expect(await page.evaluate(() => pictures.transparent())).toEqual([255, 255, 255, 255]);
});

test("stopping one picture leaves the others to be kept", async ({ page }) => {
  expect(await page.evaluate(() => pictures.stopFirst())).toEqual(["AbortError", "picture", "picture"]);
});
