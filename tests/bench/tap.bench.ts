/**
 * How long a pressed reply takes until it is durable, judged again and painted, in the built app, on a processor slowed
 * to a quarter, with 500 replies in the visit. Needs `npm run build` and a browser.
 */
import { chromium, type Page } from "@playwright/test";
import { KEPT_EVENT } from "../../src/app/kept-event.js";
import { serve } from "../../src/cli/serve.js";
import { BROWSER_FLAGS, findBrowser, NO_BROWSER } from "../support/browser.js";
import { Walker } from "../support/walker.js";
import { type Bench, percentile } from "./row.js";

const PRESENT = 500;
const PER_POINT = 25;
const MEASURED = 100;
const GOES_ON_WITHIN_MS = 600;
/** Chrome DevTools' own factor: four times slower than this machine. */
const SLOWED = 4;

interface Press {
  /** From the press until the entry is durable, folded and judged; and until the frame after that was painted. */
  readonly durable: number;
  readonly painted: number;
}

/** Presses the replies of the open point in turn, `count` times. */
function pressMany(page: Page, count: number): Promise<Press[]> {
  return page.evaluate(
    async ({ times, keptEvent }) => {
      const presses: { durable: number; painted: number }[] = [];
      for (let done = 0; done < times; done++) {
        const open = [
          ...document.querySelectorAll<HTMLElement>("main .replies > .reply[aria-pressed=false]:not([aria-haspopup])"),
        ];
        const reply = open[done % open.length];
        if (!reply) throw new Error("the open point has no reply to press");
        const began = performance.now();
        const kept = new Promise<number>((resolve) =>
          document.addEventListener(keptEvent, () => resolve(performance.now()), { once: true }),
        );
        reply.click();
        const durable = (await kept) - began;
        // A message sent in a frame's callback arrives once that frame has been painted.
        await new Promise<void>((resolve) =>
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve();
            port2.postMessage(0);
          }),
        );
        presses.push({ durable, painted: performance.now() - began });
      }
      return presses;
    },
    { times: count, keptEvent: KEPT_EVENT },
  );
}

/** Opens the next point whose replies exclude each other, answered once so that the round no longer goes on by itself. */
async function nextChoice(walker: Walker): Promise<void> {
  const choices = walker.page.locator("main .replies > .reply[aria-pressed]:not([aria-haspopup])");
  for (let passed = 0; passed < 20; passed++) {
    await walker.toNextReplies();
    if ((await choices.count()) > 2) break;
    await walker.goOn();
  }
  const { hash } = await walker.pressReply(choices.first());
  await walker.page.waitForTimeout(GOES_ON_WITHIN_MS);
  await walker.open(hash);
  await choices.first().waitFor();
}

export const bench: Bench = async () => {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(NO_BROWSER);
  const serving = await serve({ port: 0 });
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS] });
  try {
    const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    const walker = new Walker(page, serving.address);
    await walker.newCar("Measured car");
    await walker.newVisit();
    for (let present = 0; present < PRESENT; present += PER_POINT) {
      await nextChoice(walker);
      await pressMany(page, PER_POINT);
      await walker.goOn();
    }
    await nextChoice(walker);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
    await pressMany(page, 5);
    const presses = await pressMany(page, MEASURED);
    const of = (what: keyof Press, share: number): number =>
      percentile(
        presses.map((press) => press[what]),
        share,
      );
    return [
      {
        what: `A reply pressed, processor at a quarter, ${PRESENT} replies in the visit`,
        unit: "ms",
        figures: {
          "painted, 95 of 100 within": of("painted", 0.95),
          "painted, half within": of("painted", 0.5),
          "durable and judged, 95 of 100 within": of("durable", 0.95),
          "durable and judged, half within": of("durable", 0.5),
        },
        goal: "painted within 50 ms for 95 of 100 (architecture §10)",
        note: "Many of the replies replace earlier ones at the same point: one sheet has fewer points.",
      },
    ];
  } finally {
    await browser.close();
    await serving.close();
  }
};
