/**
 * Finds an address for every route of the route table by following the app's own links and what is pressed on the way,
 * as a person would. Fails while a route cannot be reached. Refuses to make addresses up.
 */
import { expect, type Page } from "@playwright/test";
import { DEMO_THIRD } from "../../src/app/demo/names.js";
import { paramOf, ROUTES, type RouteName, readAddress, to } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { t as sheetWork } from "../../src/app/texts/sheet-work.js";
import type { Walker } from "./walker.js";

/** The point at which the demo listened to both sides. */
const HEARD = to("point", { visit: paramOf(DEMO_THIRD), state: "w7-hang", place: "RR", point: "whl.listen" });

export type FoundAddresses = ReadonlyMap<RouteName, string>;

const hashOf = (page: Page): string => new URL(page.url()).hash || "#/";
const nameOf = (hash: string): RouteName | undefined => readAddress(hash)?.name;

/** Addresses this screen links to, in order. */
const linksOn = (page: Page): Promise<string[]> =>
  page.locator('a[href^="#"]').evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));

/** Opens `hash` and waits for its screen, whose words must be neither a mistake of ours nor a dead end. */
export async function openScreen(walker: Walker, hash: string): Promise<void> {
  await walker.open(hash);
  for (const dead of [t("app.nowhere"), t("app.missing"), t("app.broke")]) {
    await expect(walker.page.getByText(dead, { exact: true }), `${hash} shows "${dead}"`).toHaveCount(0);
  }
  await expect(walker.page.locator("[aria-busy=true]")).toHaveCount(0);
}

/** Reached by a press, by the address alone, or after something was kept: {@link furtherRoutes} sees to them. */
const OTHERWISE: readonly RouteName[] = [
  ...(["demo", "judge-again", "part", "point", "picture", "sound", "wearing", "wear"] as const),
  ...(["sheet-work", "sheet-list", "sheet-item", "sheet-try", "sheet-difference", "new-sheet"] as const),
];
const BY_LINK = (Object.keys(ROUTES) as RouteName[]).filter((name) => !OTHERWISE.includes(name));

/** Begins to change the sheet whose screen is open: the screens of a sheet under work stand only then. */
export async function beginSheetWork({ page }: Walker): Promise<void> {
  await page.getByRole("button", { name: sheetWork("sheet-work.change") }).click();
  await expect(page).toHaveURL(/\/work$/);
}

async function workRoutes(walker: Walker, found: Map<RouteName, string>): Promise<void> {
  const { page } = walker;
  await beginSheetWork(walker);
  found.set("sheet-work", hashOf(page));
  const leads: readonly (readonly [RouteName, string])[] = [
    ["sheet-try", 'main a[href$="/try"]'],
    ["sheet-difference", 'main a[href$="/difference"]'],
    ["sheet-list", 'main a[href$="/work/points"]'],
  ];
  for (const [name, where] of leads) {
    const link = page.locator(where).first();
    await expect(link).toBeVisible();
    found.set(name, (await link.getAttribute("href")) ?? "");
  }
  await page.locator('main a[href$="/work/points"]').first().click();
  const item = page.locator('main a[href*="/work/points/"]').first();
  await expect(item).toBeVisible();
  found.set("sheet-item", (await item.getAttribute("href")) ?? "");
}

/** What is reached by a press, by the address alone, or only after something was kept. */
async function furtherRoutes(walker: Walker, found: Map<RouteName, string>): Promise<void> {
  const { page } = walker;
  const visit = [...found.values()].map((hash) => /#\/visit\/([^/]+)/.exec(hash)?.[1]).find((id) => id !== undefined);
  if (visit === undefined) throw new Error("no visit was found by following links");
  found.set("demo", "#/demo");
  await walker.keepFigure("lim.float-taper", "0.1", "dangerous");
  const again = page.locator('a[href*="/judge-again"]').first();
  found.set("judge-again", (await again.getAttribute("href")) ?? "");
  // A job's parts come a moment after the job itself.
  await openScreen(walker, found.get("job") ?? "");
  const part = page.locator('main a[href*="/work/"]').first();
  await expect(part).toBeVisible();
  found.set("part", (await part.getAttribute("href")) ?? "");
  // What is wearing comes a moment after the car's page: its visits are judged first.
  const leads: readonly (readonly [RouteName, RouteName, string])[] = [
    ["wearing", "car", 'main a[href$="/wearing"]'],
    ["wear", "wearing", 'main a[href*="/wearing/"]'],
  ];
  for (const [name, from, where] of leads) {
    await openScreen(walker, found.get(from) ?? "");
    const link = page.locator(where).first();
    await expect(link).toBeVisible({ timeout: 60_000 });
    found.set(name, (await link.getAttribute("href")) ?? "");
  }
  // Below the list of sheets, with what is fetched for those under work.
  await openScreen(walker, found.get("sheets") ?? "");
  await expect(page.locator(`main a[href="${to("new-sheet")}"]`).first()).toBeVisible();
  found.set("new-sheet", to("new-sheet"));
  await openScreen(walker, to("new-sheet"));
  await openScreen(walker, found.get("sheet") ?? "");
  await workRoutes(walker, found);
  await openScreen(walker, HEARD);
  const drawn = page.locator('a[href*="/sound/"]').first();
  await expect(drawn).toBeVisible();
  found.set("sound", (await drawn.getAttribute("href")) ?? "");
  await openScreen(walker, `#/visit/${visit}/round`);
  await expect(page).toHaveURL(/\/round\/.+/);
  found.set("point", hashOf(page));
  const link = page.locator('a[href*="/picture/"]').first();
  if ((await link.count()) === 0) await walker.addPicture();
  await expect(link).toBeVisible();
  found.set("picture", (await link.getAttribute("href")) ?? "");
}

/** How many screens of one route are opened at most while another route is looked for. */
const OF_ONE_ROUTE = 3;

/**
 * An address of every route, starting from the car list with the demo in it. A screen of a route not seen yet is opened
 * first; one more of a kind only while something is still missing, since one finding may lead to what another does not.
 */
export async function findAddresses(walker: Walker): Promise<FoundAddresses> {
  const found = new Map<RouteName, string>();
  const opened = new Set<string>();
  const perRoute = new Map<RouteName, number>();
  let waiting = ["#/"];
  const take = (): readonly [string, RouteName] | undefined => {
    const worth = (hash: string): boolean => {
      const name = nameOf(hash);
      return name !== undefined && !opened.has(hash) && (perRoute.get(name) ?? 0) < OF_ONE_ROUTE;
    };
    waiting = waiting.filter(worth);
    const next = waiting.find((hash) => !found.has(nameOf(hash) ?? "cars")) ?? waiting[0];
    const name = next === undefined ? undefined : nameOf(next);
    return next === undefined || name === undefined ? undefined : [next, name];
  };
  for (let next = take(); next !== undefined && !BY_LINK.every((name) => found.has(name)); next = take()) {
    const [hash, name] = next;
    opened.add(hash);
    perRoute.set(name, (perRoute.get(name) ?? 0) + 1);
    await openScreen(walker, hash);
    if (!found.has(name)) found.set(name, hash);
    waiting.push(...(await linksOn(walker.page)));
  }
  await furtherRoutes(walker, found);
  return found;
}

/** Routes the walk did not reach. */
export const notFound = (found: FoundAddresses): readonly string[] =>
  Object.keys(ROUTES).filter((name) => !([...found.keys()] as string[]).includes(name));
