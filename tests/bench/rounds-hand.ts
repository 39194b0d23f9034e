/**
 * A hand at the phone: presses what is really there to be pressed, types, waits until it is painted, and counts it all.
 * The time of a person's hand is worked out from the counts. Knows no trade.
 */
import type { Locator, Page } from "@playwright/test";
import { KEPT_EVENT } from "../../src/app/kept-event.js";

/**
 * Seconds by the keystroke-level model (Card, Moran, Newell 1983), figures from memory: a key or the tap itself, slow end
 * of a practised hand; pointing at something; making up one's mind; a hand brought from the car to the phone.
 */
const KEYSTROKE_LEVEL = { key: 0.28, point: 1.1, mind: 1.35, homing: 0.4 };

/** What a press leads to: a durable entry, another screen or point, or only a change of this one. */
export type Until = "kept" | "moved" | "painted";

/** Longer than any press may take here, on a busy machine too. */
const STUCK_AFTER_MS = 20_000;

/** What a hand did. */
export class Tally {
  taps = 0;
  keys = 0;
  swipes = 0;
  minds = 0;
  homings = 0;
  screens = 0;
  /** From a press until what it led to was painted. */
  waitedMs = 0;

  /** Seconds of hand and mind, without looking and without the machine. */
  get handSeconds(): number {
    const { key, point, mind, homing } = KEYSTROKE_LEVEL;
    return (this.taps + this.swipes) * (point + key) + this.keys * key + this.minds * mind + this.homings * homing;
  }
}

export class Hand {
  readonly tally = new Tally();
  constructor(readonly page: Page) {}

  /** Presses what lies there, drawn into view first if need be; throws where something covers it. */
  async press(target: Locator, until: Until): Promise<void> {
    const { ms, swipes } = await target.first().evaluate(
      async (element, { wanted, keptEvent, most }) => {
        const foot = document.querySelector(".foot")?.getBoundingClientRect().top ?? innerHeight;
        const from = element.getBoundingClientRect();
        const inFoot = element.closest(".foot, dialog, .at-hand") !== null;
        const hidden = inFoot ? 0 : Math.max(0, from.bottom - foot, 50 - from.top);
        element.scrollIntoView({ block: hidden > 0 ? "center" : "nearest", behavior: "instant" });
        const box = element.getBoundingClientRect();
        const hit = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
        if (hit === null || !(element.contains(hit) || hit.contains(element)))
          throw new Error(`something lies over “${element.textContent}”: ${hit?.outerHTML.slice(0, 120)}`);
        if (element.matches(":disabled")) throw new Error(`“${element.textContent}” cannot be pressed`);
        const before = location.hash;
        const began = performance.now();
        const kept = new Promise<void>((resolve) =>
          document.addEventListener(keptEvent, () => resolve(), { once: true }),
        );
        (element as HTMLElement).click();
        if (wanted === "kept") {
          const late = new Promise<never>((_, reject) => setTimeout(() => reject(new Error("not kept")), most));
          await Promise.race([kept, late]);
        }
        for (;;) {
          // A message sent in a frame's callback arrives once that frame has been painted.
          await new Promise<void>((resolve) =>
            requestAnimationFrame(() => {
              const { port1, port2 } = new MessageChannel();
              port1.onmessage = () => resolve();
              port2.postMessage(0);
            }),
          );
          const stands = document.querySelector("h1") !== null && document.querySelector("[aria-busy=true]") === null;
          if (wanted !== "moved" || (location.hash !== before && stands)) break;
          if (performance.now() - began > most)
            throw new Error(`“${element.textContent}” leads nowhere from ${before}`);
        }
        return { ms: performance.now() - began, swipes: Math.ceil(hidden / (innerHeight * 0.7)) };
      },
      { wanted: until, keptEvent: KEPT_EVENT, most: STUCK_AFTER_MS },
    );
    this.tally.taps++;
    this.tally.swipes += swipes;
    this.tally.waitedMs += ms;
    if (until === "moved") this.tally.screens++;
  }

  /** Types into a field and leaves it, as the phone's own keyboard does. */
  async type(target: Locator, text: string): Promise<void> {
    await target.fill(text);
    await target.blur();
    this.tally.taps++;
    this.tally.keys += text.length;
  }

  /** Presses the keys of the app's own keypad. */
  async keypad(text: string, decimalKey: string): Promise<void> {
    const pad = this.page.locator(".pad-keys");
    for (const sign of text) {
      const key = pad.getByRole("button", { name: sign === "." ? decimalKey : sign, exact: true });
      await this.press(key, "painted");
      // A key of a pad under the thumb is no pointing anew.
      this.tally.taps--;
      this.tally.keys++;
    }
  }

  /** Waits for what the app does by itself: on to the next point of the place. */
  async goneByItself(before: string): Promise<boolean> {
    const ms = await this.page.evaluate(
      async ({ from, most }) => {
        const began = performance.now();
        while (location.hash === from && performance.now() - began < most)
          await new Promise<void>((resolve) => requestAnimationFrame(() => resolve()));
        return location.hash === from ? -1 : performance.now() - began;
      },
      { from: before, most: 1500 },
    );
    if (ms < 0) return false;
    this.tally.waitedMs += ms;
    this.tally.screens++;
    return true;
  }
}
