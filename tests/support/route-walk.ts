/**
 * Which screen of the route table leads to which, noted while a walk goes over them, and whether every one can be reached
 * from the car list by the app's own links. Refuses to make addresses up.
 */
import { expect, type Page } from "@playwright/test";
import { DEMO_THIRD } from "../../src/app/demo/names.js";
import { paramOf, ROUTES, type RouteName, readAddress, to } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { t as sheetWork } from "../../src/app/texts/sheet-work.js";
import type { Walker } from "./walker.js";

/** The point at which the demo listened to both sides. */
const HEARD = to("point", { visit: paramOf(DEMO_THIRD), state: "w7-hang", place: "RR", point: "whl.listen" });

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

/** Begins to change the sheet whose screen is open: the screens of a sheet under work stand only then. */
export async function beginSheetWork({ page }: Walker): Promise<void> {
  await page.getByRole("button", { name: sheetWork("sheet-work.change") }).click();
  await expect(page).toHaveURL(/\/work$/);
}

/** Links that come a moment after their screen: what they lead to is judged or fetched first. */
const LATER: Partial<Readonly<Record<RouteName, readonly string[]>>> = {
  car: ['main a[href$="/wearing"]'],
  wearing: ['main a[href*="/wearing/"]'],
  job: ['main a[href*="/work/"]'],
  sheets: [`main a[href="${to("new-sheet")}"]`],
  "sheet-work": ["try", "difference", "work/points"].map((end) => `main a[href$="/${end}"]`),
  "sheet-list": ['main a[href*="/work/points/"]'],
};

/** Brought in by its own address and begun by a press ({@link beginSheetWork}); everything else has a link. */
const BY_PRESS: readonly RouteName[] = ["demo", "sheet-work"];

/** How many further screens of one route are opened at most while another route is looked for. */
const OF_ONE_ROUTE = 3;

/** What a walk saw of the ways between screens. */
export class Ways {
  readonly #leads = new Map<RouteName, Set<RouteName>>();
  readonly #linked = new Set<string>();
  readonly #opened = new Set<string>();
  readonly #further = new Map<RouteName, number>();

  /** Notes where the open screen leads; `asked` is what it was opened by, which may have led on by itself. */
  async note(page: Page, asked: string): Promise<void> {
    const here = nameOf(hashOf(page));
    const from = nameOf(asked);
    if (here === undefined || from === undefined) throw new Error(`${asked} is no screen`);
    for (const where of LATER[here] ?? []) await expect(page.locator(where).first()).toBeVisible({ timeout: 60_000 });
    this.#opened.add(asked).add(hashOf(page));
    this.#lead(from, here);
    for (const hash of await linksOn(page)) {
      const name = nameOf(hash);
      if (name === undefined) continue;
      this.#lead(here, name);
      this.#linked.add(hash);
    }
  }

  #lead(from: RouteName, on: RouteName): void {
    this.#leads.set(from, (this.#leads.get(from) ?? new Set()).add(on));
  }

  /** Routes no way leads to from the car list, by all that was noted. */
  unreached(): readonly RouteName[] {
    const reached = new Set<RouteName>(["cars", ...BY_PRESS]);
    for (const name of reached) for (const on of this.#leads.get(name) ?? []) reached.add(on);
    return (Object.keys(ROUTES) as RouteName[]).filter((name) => !reached.has(name));
  }

  /** Opens one screen more after another while something cannot be reached: one finding may lead to what another does not. */
  async lookFurther(walker: Walker): Promise<void> {
    for (const hash of [HEARD, ...this.#linked]) {
      if (this.unreached().length === 0) return;
      const name = nameOf(hash);
      const opened = name === undefined ? OF_ONE_ROUTE : (this.#further.get(name) ?? 0);
      if (name === undefined || opened >= OF_ONE_ROUTE || this.#opened.has(hash)) continue;
      this.#further.set(name, opened + 1);
      await openScreen(walker, hash);
      await this.note(walker.page, hash);
    }
  }
}
