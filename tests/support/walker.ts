/**
 * Goes through the app as a person does, by roles and words from the app's own catalogue: cars, visits, the round.
 * Refuses to reach into the app's state.
 */
import { expect, type Locator, type Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";

export interface VisitWishes {
  readonly who?: "technician" | "buyer" | "owner";
  readonly odometer?: string;
  readonly complaint?: string;
  readonly name?: string;
}

/** Something to press, link or button, by its words. */
export const pressable = (page: Page | Locator, words: string | RegExp): Locator =>
  page.getByRole("button", { name: words }).or(page.getByRole("link", { name: words }));

export class Walker {
  constructor(
    readonly page: Page,
    readonly address: string,
  ) {}

  /** Opens an address of the app (`#/…`) and waits until its screen stands. */
  async open(hash = "#/"): Promise<void> {
    await this.page.goto(this.address + hash);
    await this.stands();
    const read = this.page.getByRole("button", { name: t("notice.read") });
    if (await read.isVisible()) await read.click();
    await this.stands();
  }

  /** A screen stands once it has its title. */
  async stands(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1 }).first()).toBeVisible();
  }

  /** Everything is on the phone: the service worker has it all and answers. */
  async wholeAppKept(): Promise<void> {
    await this.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await expect.poll(() => this.page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  }

  async press(words: string | RegExp): Promise<void> {
    await pressable(this.page, words).first().click();
  }

  async newCar(name: string): Promise<void> {
    await this.open("#/");
    await this.press(t("cars.new"));
    await this.page.getByLabel(t("new-car.name")).fill(name);
    await this.press(t("new-car.create"));
    await expect(this.page.getByRole("heading", { name })).toBeVisible();
  }

  /** Opens a visit from a car's screen and stays on the screen that follows. */
  async newVisit(wishes: VisitWishes = {}): Promise<void> {
    await this.press(t("car.new-visit"));
    await this.page.getByRole("radio", { name: t(`who.${wishes.who ?? "technician"}`) }).click();
    if (wishes.name) await this.page.getByLabel(t("new-visit.your-name")).fill(wishes.name);
    if (wishes.odometer) await this.page.getByLabel(t("new-visit.odometer"), { exact: true }).fill(wishes.odometer);
    if (wishes.complaint) await this.page.getByLabel(t("new-visit.complaint")).fill(wishes.complaint);
    await this.press(t("new-visit.open"));
    await expect(this.page).toHaveURL(/#\/visit\//);
  }

  /** The visit's id, out of the address. */
  visit(): string {
    const id = /#\/visit\/([^/?]+)/.exec(this.page.url())?.[1];
    if (id === undefined) throw new Error(`no visit in ${this.page.url()}`);
    return id;
  }
}
