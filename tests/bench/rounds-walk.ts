/**
 * Goes round the car by the app's own next actions and answers what stands on the screen as a sound car would have it.
 * Ends at the round's own end or when time is up; throws where the round gets stuck.
 */
import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { t as reading } from "../../src/app/texts/reading.js";
import { t as round } from "../../src/app/texts/round.js";
import { ACTS, WAY } from "../../src/core/assess/value-room.js";
import { engineIn } from "../../src/core/sheet/run.js";
import { Hand } from "./rounds-hand.js";
import { type MetField, repliesText, type SheetsOfRound } from "./rounds-sheets.js";

/** More than any round has; and the same point met so often means that it cannot be left answered. */
const MOST_STEPS = 2500;
const MOST_MEETINGS = 4;

interface SeenField {
  readonly kind: "replies" | "reading" | "typed";
  readonly replies: readonly string[];
  readonly several: boolean;
  readonly answered: boolean;
  /** `point field` of a reading, the box's id of a typed one. */
  readonly name: string;
}

interface Seen {
  readonly hash: string;
  readonly gated: boolean;
  readonly fields: readonly SeenField[];
  readonly next: string;
  readonly rest: boolean;
  readonly same: boolean;
}

const look = (page: Page): Promise<Seen> =>
  page.evaluate(
    ({ enter, rest, sames }) => ({
      hash: location.hash,
      gated: document.querySelector("main .gate") !== null,
      fields: [...document.querySelectorAll("main .point-field")].map((field) => {
        const replies = [...field.querySelectorAll(".reply:not([aria-haspopup])")];
        const link = field.querySelector<HTMLAnchorElement>('a[href*="/reading/"]');
        const box = field.querySelector<HTMLInputElement>("input");
        const address = link?.hash.split("/") ?? [];
        return {
          kind: link ? ("reading" as const) : box ? ("typed" as const) : ("replies" as const),
          replies: replies.map((one) => one.querySelector(".reply-words")?.textContent?.trim() ?? ""),
          several: replies.some((one) => one.getAttribute("role") === "checkbox"),
          answered: link
            ? !(link.textContent ?? "").includes(enter)
            : box
              ? box.value !== ""
              : replies.some((one) => (one.ariaPressed ?? one.ariaChecked) === "true"),
          name: link ? address.slice(-2).join(" ") : (box?.id ?? ""),
        };
      }),
      next: document.querySelector(".thumbs .action")?.textContent ?? "",
      rest: [...document.querySelectorAll(".row-title")].some((row) => row.textContent === rest),
      same: [...document.querySelectorAll(".row-title")].some((row) => sames.includes(row.textContent ?? "")),
    }),
    {
      enter: round("round.reading"),
      rest: round("round.rest"),
      sames: [round("round.same"), round("round.same.joint")],
    },
  );

/** What came of a round. */
export interface WalkedRound {
  readonly hand: Hand["tally"];
  readonly covered: ReadonlySet<string>;
  readonly lookSeconds: number;
  readonly waySeconds: number;
  readonly gates: readonly string[];
  readonly swept: number;
  readonly same: number;
  readonly isThrough: boolean;
  readonly clumsy: readonly string[];
}

export const spot = (one: { readonly state: string; readonly place: string; readonly point: string }): string =>
  `${one.state} ${one.place} ${one.point}`;

/** The point an address of the round names. */
function atHash(hash: string): { readonly state: string; readonly place: string; readonly point: string } {
  const [state = "", place = "", point = ""] = hash.split("/").slice(4, 7).map(decodeURIComponent);
  return { state, place, point };
}

export class RoundWalk {
  readonly hand: Hand;
  private readonly covered = new Set<string>();
  private readonly meetings = new Map<string, number>();
  private readonly gates: string[] = [];
  private readonly clumsy: string[] = [];
  private lookSeconds = 0;
  private waySeconds = 0;
  private free = 0;
  private swept = 0;
  private same = 0;
  private isLate = false;
  private stood: { readonly state: string; readonly place: string } | undefined;

  constructor(
    readonly page: Page,
    readonly sheets: SheetsOfRound,
    /** Seconds all of it may take; no end where nothing is said. */
    readonly time = Number.POSITIVE_INFINITY,
  ) {
    this.hand = new Hand(page);
  }

  get spent(): number {
    return this.hand.tally.handSeconds + this.hand.tally.waitedMs / 1000 + this.lookSeconds + this.waySeconds;
  }

  /** Goes round until the app says that there is nothing more, or there is no time for the next point. */
  async walk(): Promise<WalkedRound> {
    for (let step = 0; step < MOST_STEPS; step++) {
      if (this.isLate) return this.told(false);
      await this.stands();
      const seen = await look(this.page);
      if (seen.gated) {
        await this.passGate(seen);
        continue;
      }
      const open = this.openFields(seen);
      if (open.length > 0) {
        if (
          this.spent +
            this.timeFor(
              seen.hash,
              open.map(({ met }) => met.point),
            ) >
          this.time
        )
          return this.told(false);
        await this.answer(seen, open);
        continue;
      }
      if (seen.next.includes(round("round.finish"))) return this.told(true);
      this.cover(seen.hash);
      await this.hand.press(this.page.locator(".thumbs .action"), "moved");
    }
    throw new Error(`no end after ${MOST_STEPS} steps, at ${this.page.url()}`);
  }

  /** A point or a gate stands, with what leads on below it. */
  private async stands(): Promise<void> {
    const { page } = this;
    await page.locator("main .point-field, main .gate").first().waitFor();
    await page.locator(".thumbs .action").waitFor();
  }

  private told(isThrough: boolean): WalkedRound {
    const { covered, lookSeconds, waySeconds, gates, swept, same, clumsy } = this;
    return { hand: this.hand.tally, covered, lookSeconds, waySeconds, gates, swept, same, isThrough, clumsy };
  }

  private actIn(id: string): number | undefined {
    const state = this.sheets.known.states.get(id);
    return state && ACTS.get(engineIn(state));
  }

  private wayTo({ state, place }: { readonly state: string; readonly place: string }): number {
    if (this.stood?.state === state && this.stood.place === place) return 0;
    const way = this.stood?.state === state ? 0 : (this.actIn(state) ?? WAY.state);
    return way + WAY.place;
  }

  /** Seconds for going to a point and looking at it and at what is asked in its entry. */
  private timeFor(hash: string, fellows: readonly string[] = []): number {
    const at = atHash(hash);
    const points = new Set([at.point, ...fellows]);
    const looks = [...points].reduce((sum, point) => sum + (this.sheets.worths.get(point)?.look ?? 0), 0);
    return this.wayTo(at) + Math.max(0, looks - this.freeIn(at.state));
  }

  /** Seconds an act still goes on by itself: what is looked at meanwhile takes none of its own. */
  private freeIn(state: string): number {
    return this.stood?.state === state ? this.free : (this.actIn(state) ?? 0);
  }

  /** One point looked at, where it stands. */
  private cover(hash: string, fellows: readonly string[] = []): void {
    const at = atHash(hash);
    this.waySeconds += this.wayTo(at);
    this.free = this.freeIn(at.state);
    this.stood = at;
    for (const point of new Set([at.point, ...fellows])) {
      const key = spot({ ...at, point });
      if (this.covered.has(key)) continue;
      this.covered.add(key);
      const looks = this.sheets.worths.get(point)?.look ?? 0;
      this.lookSeconds += Math.max(0, looks - this.free);
      this.free = Math.max(0, this.free - looks);
    }
  }

  private meet(hash: string, field: SeenField): MetField {
    const { point } = atHash(hash);
    const { byName, byReplies } = this.sheets;
    const named =
      field.kind === "reading" ? byName.get(field.name) : byName.get(`${point} ${field.name.replace(/^field-/, "")}`);
    const listed = byReplies.get(repliesText(field.replies)) ?? [];
    const met = named ?? listed.find((one) => one.point === point) ?? listed[0];
    if (!met) throw new Error(`a field at ${hash} stands in no sheet: ${JSON.stringify(field)}`);
    return met;
  }

  /** What must be said yet: every field that must be there; of a point with none such, any one. */
  private openFields(
    seen: Seen,
  ): readonly { readonly index: number; readonly seen: SeenField; readonly met: MetField }[] {
    const all = seen.fields.map((field, index) => ({ index, seen: field, met: this.meet(seen.hash, field) }));
    return [...new Set(all.map(({ met }) => met.point))].flatMap((point) => {
      const own = all.filter(({ met }) => met.point === point);
      const must = own.filter(({ met }) => met.required);
      if (must.length > 0) return must.filter((one) => !one.seen.answered);
      if (own.some((one) => one.seen.answered)) return [];
      return own.toSorted((a, b) => Number(b.seen.kind === "replies") - Number(a.seen.kind === "replies")).slice(0, 1);
    });
  }

  private async answer(seen: Seen, open: ReturnType<RoundWalk["openFields"]>): Promise<void> {
    const { hand, page } = this;
    this.cover(
      seen.hash,
      open.map(({ met }) => met.point),
    );
    hand.tally.homings++;
    hand.tally.minds++;
    if (seen.rest) {
      await this.sweepPlace();
      return;
    }
    const times = (this.meetings.get(seen.hash) ?? 0) + 1;
    this.meetings.set(seen.hash, times);
    if (times > MOST_MEETINGS) throw new Error(`stuck at ${seen.hash}: its replies do not complete it`);
    if (times === 2) this.clumsy.push(`came back to ${seen.hash.split("/round/")[1]}`);
    for (const { index, seen: field, met } of open) {
      const box = page.locator("main .point-field").nth(index);
      if (field.kind === "reading") return this.read(met, index);
      if (field.kind === "typed") {
        await hand.type(box.locator("input"), met.sound);
        continue;
      }
      const reply = box.locator(".reply:not([aria-haspopup])").nth(field.replies.indexOf(met.sound));
      await hand.press(reply, "kept");
    }
    const after = await look(page);
    if (after.hash !== seen.hash) return;
    const goesOn = after.next.includes(round("round.next")) && !open.some(({ seen: field }) => field.several);
    if (goesOn && this.openFields(after).length === 0 && (await hand.goneByItself(seen.hash))) return;
    if (after.same && (await look(page)).same) await this.sameElsewhere();
  }

  /** 'No fault seen for the rest of this place', once one has looked. */
  private async sweepPlace(): Promise<void> {
    const { hand, page } = this;
    const before = new URL(page.url()).hash;
    await hand.press(page.locator(".row", { hasText: round("round.rest") }), "painted");
    const sheet = page.getByRole("dialog");
    const keep = sheet.getByRole("button", { name: t("round.rest.keep") });
    await keep.waitFor();
    const names = await sheet.evaluate((dialog, left) => {
      const rows = [...dialog.querySelectorAll("p, .row-title")].map((one) => one.textContent ?? "");
      const until = rows.indexOf(left);
      return rows.slice(0, until < 0 ? undefined : until);
    }, t("round.rest.left"));
    for (const name of names) {
      const point = this.sheets.pointCalled.get(name);
      if (point === undefined) continue;
      this.cover(before.replace(/[^/]+$/, point));
      this.swept++;
    }
    hand.tally.minds++;
    await hand.press(keep, "kept");
  }

  /** 'All joints here the same', where it is offered after a reply. */
  private async sameElsewhere(): Promise<void> {
    const { hand, page } = this;
    const before = atHash(new URL(page.url()).hash);
    const row = page.locator(".row").filter({ hasText: round("round.same") });
    const joints = page.locator(".row").filter({ hasText: round("round.same.joint") });
    await hand.press((await joints.count()) > 0 ? joints : row, "painted");
    const sheet = page.getByRole("dialog");
    const keep = sheet.getByRole("button", { name: t("round.same.keep") });
    await keep.waitFor();
    const places = Object.entries(this.sheets.known.words.places);
    for (const name of await sheet.locator(".row-title").allTextContents()) {
      const place = places.find(([, called]) => called === name)?.[0];
      if (place === undefined) continue;
      const key = spot({ ...before, place });
      if (this.covered.has(key)) continue;
      this.covered.add(key);
      this.lookSeconds += this.sheets.worths.get(before.point)?.look ?? 0;
      this.same++;
    }
    hand.tally.minds++;
    await hand.press(keep, "kept");
  }

  /** Readings, one after the other where the app leads on to the next of the same round. */
  private async read(first: MetField, index: number): Promise<void> {
    const { hand, page } = this;
    await hand.press(page.locator("main .point-field").nth(index).locator('a[href*="/reading/"]'), "moved");
    for (let met: MetField | undefined = first; met; ) {
      const typeTime = page.getByRole("button", { name: reading("reading.type-time") });
      await page.locator(".pad").or(typeTime).first().waitFor();
      if (await typeTime.isVisible()) await hand.press(typeTime, "painted");
      hand.tally.homings++;
      hand.tally.minds++;
      const keep = page.locator(".pad .keep");
      for (let shot = 0; shot < met.shots; shot++) {
        await hand.keypad(met.sound, reading("reading.point-key"));
        await hand.press(keep, "kept");
      }
      const words = (await keep.textContent()) ?? "";
      await hand.press(keep, "moved");
      const address: readonly string[] = new URL(page.url()).hash.split("/");
      if (!words.startsWith("Next")) return;
      this.isLate = this.spent + this.timeFor(address.slice(0, 7).join("/")) > this.time;
      if (this.isLate) return;
      this.cover(address.slice(0, 7).join("/"));
      met = this.sheets.byName.get(address.slice(6, 8).join(" "));
      if (!met) throw new Error(`a reading at ${page.url()} stands in no sheet`);
    }
  }

  /** A gate on the way: noted as passed unproven, with the reason. */
  private async passGate({ hash }: Seen): Promise<void> {
    const { hand, page } = this;
    const unproven = page.getByRole("button", { name: t("gate.unproven") });
    if ((await unproven.count()) === 0)
      throw new Error(`a gate lets nobody on at ${hash}: ${await page.locator("main .gate").first().textContent()}`);
    const title = (await page.locator("main .gate h2 a").first().textContent()) ?? "";
    this.gates.push(`${title}, before ${atHash(hash).state}`);
    hand.tally.homings++;
    hand.tally.minds += 2;
    await hand.press(unproven, "painted");
    await hand.type(page.getByLabel(t("gate.unproven.why")), "No lift here");
    await hand.press(page.getByRole("button", { name: t("gate.unproven.keep") }), "kept");
    hand.tally.screens++;
    await page.waitForFunction((was) => document.querySelector("main .gate h2 a")?.textContent !== was, title);
  }
}
