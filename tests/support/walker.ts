/**
 * Goes through the app as a person does, by roles and words from the app's own catalogue: cars, visits, the round.
 * Refuses to reach into the app's state.
 */
import { fileURLToPath } from "node:url";
import { expect, type FileChooser, type Locator, type Page } from "@playwright/test";
import { DEMO_CAR } from "../../src/app/demo/names.js";
import { paramOf } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { t as figures } from "../../src/app/texts/limits.js";
import { t as media } from "../../src/app/texts/media.js";
import { untilKept } from "./kept.js";

export interface VisitWishes {
  /** What for; a workshop job where nothing is said. */
  readonly purpose?: "workshop" | "viewing" | "season";
  readonly who?: "technician" | "buyer" | "owner";
  readonly odometer?: string;
  readonly complaint?: string;
  readonly name?: string;
  /** Title of the one sheet wanted; the wheel bearings where nothing is said. */
  readonly onlySheet?: string;
  /** Titles of the sheets wanted, instead of one. */
  readonly sheets?: readonly string[];
}

/** The sheet a walk is about when it names none. */
const WHEEL_BEARINGS = "Wheel bearings and wheel fixing";

/** Which reply was pressed, and the address of its point. */
export interface Pressed {
  readonly hash: string;
  readonly words: string;
}

/** Writing the demo only ever takes this long where a busy machine does. */
const WRITTEN_WITHIN_MS = 60_000;

/** The round leaves a point where nothing is left to say within this. */
const GOES_ON_WITHIN_MS = 1_000;

/** Something to press, link or button, by its words. */
export const pressable = (page: Page | Locator, words: string | RegExp): Locator =>
  page.getByRole("button", { name: words }).or(page.getByRole("link", { name: words }));

/** What leads on from the open point: the next one here, the next place, or how the car must stand now. */
export const onward = (page: Page): Locator =>
  pressable(page, t("round.next"))
    .or(pressable(page, t("round.next-place")))
    .or(pressable(page, new RegExp(`^${t("round.now", { state: "" })}`)))
    .first();

export class Walker {
  constructor(
    readonly page: Page,
    readonly address: string,
  ) {}

  /** Opens an address of the app (`#/…`) and waits until its screen stands; `within`: where that may take long, ms. */
  async open(hash = "#/", within?: number): Promise<void> {
    await this.page.goto(this.address + hash);
    // The address is told a task later: until then the screen before still stands, and would take the next press.
    await this.page.evaluate(() => new Promise<void>((told) => setTimeout(() => setTimeout(told))));
    await this.stands(within);
    const read = this.page.getByRole("button", { name: t("notice.read") });
    if (await read.isVisible()) await read.click();
    await this.stands(within);
  }

  /** A screen stands once it has its title. */
  async stands(within?: number): Promise<void> {
    const patience = within === undefined ? {} : { timeout: within };
    await expect(this.page.getByRole("heading", { level: 1 }).first()).toBeVisible(patience);
  }

  /** Brings the demo in through the real record, three visits and a plan, and stands at its car. */
  async openDemo(): Promise<void> {
    await this.open("#/demo", WRITTEN_WITHIN_MS);
    await expect(this.page).toHaveURL(new RegExp(`#/car/${paramOf(DEMO_CAR)}`));
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
    if (wishes.purpose)
      await this.page.getByRole("radio", { name: t(`purpose.${wishes.purpose}`), exact: true }).click();
    await this.page.getByRole("radio", { name: t(`who.${wishes.who ?? "technician"}`) }).click();
    if (wishes.name) await this.page.getByLabel(t("new-visit.your-name")).fill(wishes.name);
    if (wishes.odometer) await this.page.getByLabel(t("new-visit.odometer"), { exact: true }).fill(wishes.odometer);
    if (wishes.complaint) await this.page.getByLabel(t("new-visit.complaint")).fill(wishes.complaint);
    await this.leaveAllBut(wishes.sheets ?? [wishes.onlySheet ?? WHEEL_BEARINGS]);
    await this.press(t("new-visit.open"));
    await expect(this.page).toHaveURL(/#\/visit\//);
  }

  /** Chooses off every sheet of the form but those of these titles. */
  private async leaveAllBut(titles: readonly string[]): Promise<void> {
    const sheets = this.page.getByRole("group", { name: t("new-visit.sheets") }).getByRole("checkbox");
    for (const title of titles) {
      const wanted = sheets.filter({ hasText: title });
      if (!(await wanted.isChecked())) await wanted.click();
    }
    for (const sheet of await sheets.all()) {
      const words = (await sheet.textContent()) ?? "";
      if (!titles.some((title) => words.includes(title)) && (await sheet.isChecked())) await sheet.click();
    }
  }

  /** The visit's id, out of the address. */
  visit(): string {
    const id = /#\/visit\/([^/?]+)/.exec(this.page.url())?.[1];
    if (id === undefined) throw new Error(`no visit in ${this.page.url()}`);
    return id;
  }

  /** The replies of the open point, of one kind or the other. */
  replies(): Locator {
    return this.page.locator("main .replies > .reply:not([aria-haspopup])");
  }

  /** A reply of the open point by its words. */
  reply(words: string): Locator {
    return this.replies().filter({ hasText: words }).first();
  }

  /** Presses a reply and waits until the app says that it is durable. */
  async pressReply(reply: Locator, wishes: { readonly kept?: boolean } = {}): Promise<Pressed> {
    await expect(this.page).toHaveURL(/\/round\/[^/]+\/[^/]+\/[^/]+$/);
    const hash = new URL(this.page.url()).hash;
    const words = (await reply.locator(".reply-words").textContent())?.trim() ?? "";
    if (wishes.kept === false) await reply.click();
    else await untilKept(this.page, () => reply.click(), "reply");
    return { hash, words };
  }

  /** From now on the storage does not tell that it has written, as on a phone that writes slowly; the answer lets it. */
  async holdWriting(): Promise<() => Promise<void>> {
    await this.page.evaluate(() => {
      const prototype = IDBTransaction.prototype;
      const plain = prototype.addEventListener;
      const held: (() => void)[] = [];
      prototype.addEventListener = function (
        type: string,
        listener: EventListenerOrEventListenerObject,
        options?: unknown,
      ) {
        const tell = (event: Event): void => {
          if (typeof listener === "function") listener.call(this, event);
          else listener.handleEvent(event);
        };
        const hold = type === "complete" && this.mode === "readwrite";
        plain.call(
          this,
          type,
          hold ? (event) => void held.push(() => tell(event)) : listener,
          options as AddEventListenerOptions,
        );
      };
      document.addEventListener(
        "tests:let-go",
        () => {
          prototype.addEventListener = plain;
          for (const tell of held) tell();
        },
        { once: true },
      );
    });
    return () => this.page.evaluate(() => void document.dispatchEvent(new Event("tests:let-go")));
  }

  /** Presses the first reply of the open point. */
  async firstReply(wishes: { readonly kept?: boolean } = {}): Promise<Pressed> {
    await expect(this.replies().first()).toBeVisible();
    return this.pressReply(this.replies().first(), wishes);
  }

  /** Presses a reply of the open point that is not chosen yet. */
  async anotherReply(): Promise<Pressed> {
    return this.pressReply(this.page.locator("main .replies > .reply[aria-pressed=false]:not([aria-haspopup])").last());
  }

  /**
   * Waits until the round has left the point: by itself, as it does a moment after a reply that leaves nothing to say,
   * or by its button. Whoever opens the point again before that is carried off it.
   */
  async wentOn(pressed: Pressed): Promise<void> {
    await expect(async () => {
      const hash = () => new URL(this.page.url()).hash;
      const left = (now: URL): boolean => now.hash !== pressed.hash;
      await this.page.waitForURL(left, { timeout: GOES_ON_WITHIN_MS }).catch(() => undefined);
      if (hash() === pressed.hash) await onward(this.page).click({ timeout: 500 });
      expect(hash()).not.toBe(pressed.hash);
    }).toPass({ timeout: 20_000 });
  }

  /** Takes a picture from the album for the open point, and stays at the camera. */
  async addPicture(): Promise<void> {
    const picture = fileURLToPath(new URL("../../public/icons/leadlamp-512.png", import.meta.url));
    await this.press(t("round.photo"));
    await expect(this.page).toHaveURL(/\/camera\//);
    await this.fromAlbum([picture]);
    await expect(this.page.locator('a[href*="/picture/"]').first()).toBeVisible();
  }

  /** Chooses pictures from the album on the camera's screen. */
  async fromAlbum(files: Parameters<FileChooser["setFiles"]>[0]): Promise<void> {
    const asked = this.page.waitForEvent("filechooser");
    await this.press(media("camera.album"));
    await (await asked).setFiles(files);
  }

  /** Puts a maker's figure out of a book into the demo car's limits book; `said` where it is outside what is usual. */
  async keepFigure(
    limit: string,
    value: string,
    grade: string,
    said: { readonly why?: string; readonly sure?: boolean } = {},
  ): Promise<void> {
    await this.open(`#/car/${paramOf(DEMO_CAR)}/limits/${limit}`);
    const another = pressable(this.page, figures("figure.another"));
    const box = this.page.getByLabel(figures("figure.value"), { exact: true });
    await expect(another.or(box).first()).toBeVisible();
    if (await another.isVisible()) await another.click();
    await box.fill(value);
    await this.page.getByLabel(figures("figure.unit")).selectOption("mm");
    await this.page.getByLabel(figures("figure.grade")).selectOption(grade);
    await this.page.getByLabel(figures("figure.trust")).selectOption("maker-this");
    await this.page.getByLabel(figures("figure.way")).selectOption("book");
    await this.page.getByLabel(figures("figure.title.book"), { exact: true }).fill("Workshop notes");
    if (said.why !== undefined) await this.page.getByLabel(figures("figure.why")).fill(said.why);
    if (said.sure) await this.press(figures("odd.sure"));
    await this.press(figures("figure.keep"));
    await expect(this.page.getByText(figures("figure.kept"))).toBeVisible();
  }

  /** Leaves the open point for the next one, of this place or the next. */
  async goOn(): Promise<void> {
    const before = this.page.url();
    const next = onward(this.page);
    // The round goes on by itself once a point is complete; whichever is first.
    await expect(async () => {
      if (this.page.url() === before) await next.click({ timeout: 500 });
      expect(this.page.url()).not.toBe(before);
    }).toPass({ timeout: 10_000 });
  }

  /** Goes on to a point with replies: a gate on the way is noted as unproven, a point with a reading only is passed. */
  async toNextReplies(): Promise<void> {
    const unproven = this.page.getByRole("button", { name: t("gate.unproven") });
    for (let passed = 0; passed < 20; passed++) {
      const asks = this.replies()
        .first()
        .or(unproven)
        .or(pressable(this.page, t("round.reading")))
        .first();
      await expect(asks).toBeVisible();
      if (await unproven.isVisible()) {
        await unproven.click();
        await this.page.getByLabel(t("gate.unproven.why")).fill("No lift here");
        await this.press(t("gate.unproven.keep"));
        await expect(unproven).toBeHidden();
      } else if ((await this.replies().count()) > 0) return;
      else await this.goOn();
    }
    throw new Error("there is no point with replies any more");
  }
}
