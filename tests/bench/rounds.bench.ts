/**
 * What a whole round costs: a technician's of the wheel and brake sheets, a buyer's forty minutes and an owner's check of
 * all sheets, on a sound car without a record, through the built app. Fails where a round gets stuck or a point that is
 * asked is never met. Needs `npm run build` and a browser.
 */
import { type Browser, chromium } from "@playwright/test";
import { serve } from "../../src/cli/serve.js";
import { levelOf } from "../../src/core/terms/index.js";
import { BROWSER_FLAGS, findBrowser, NO_BROWSER } from "../support/browser.js";
import { type VisitWishes, Walker } from "../support/walker.js";
import { type SheetsOfRound, sheetsOfRound } from "./rounds-sheets.js";
import { RoundWalk, spot, type WalkedRound } from "./rounds-walk.js";
import type { Bench, BenchRow } from "./row.js";

interface Person {
  readonly who: "technician" | "buyer" | "owner";
  readonly purpose: NonNullable<VisitWishes["purpose"]>;
  readonly called: string;
  readonly sheets?: readonly string[];
  /** Seconds there are for it. */
  readonly time?: number;
}

const PEOPLE: readonly Person[] = [
  { who: "technician", purpose: "workshop", called: "A technician's wheels and brakes", sheets: ["whl", "brk"] },
  { who: "buyer", purpose: "viewing", called: "A buyer's forty minutes, all sheets", time: 40 * 60 },
  { who: "owner", purpose: "season", called: "An owner's check, all sheets" },
];

/** Points asked from the start that were not met. */
const missed = ({ asked }: SheetsOfRound, { covered }: WalkedRound): SheetsOfRound["asked"] =>
  asked.filter((one) => !covered.has(spot(one)));

/** Asked on the ground, and able to decide a danger. */
const decidesDanger = (sheets: SheetsOfRound, one: SheetsOfRound["asked"][number]): boolean =>
  sheets.known.states.get(one.state)?.lifted !== true &&
  [one.point, ...one.with].some((point) => sheets.worths.get(point)?.decides === levelOf("dangerous"));

function told(person: Person, sheets: SheetsOfRound, walk: RoundWalk, done: WalkedRound): readonly BenchRow[] {
  const left = missed(sheets, done);
  const { hand } = done;
  const grave = sheets.asked.filter((one) => decidesDanger(sheets, one));
  const graveLeft = left.filter((one) => decidesDanger(sheets, one));
  const perPoint = done.covered.size === 0 ? Number.NaN : hand.handSeconds / done.covered.size;
  return [
    {
      what: `${person.called}: what the hand does`,
      unit: "",
      figures: {
        "points met": done.covered.size,
        "of those asked from the start": sheets.asked.length - left.length,
        "asked from the start": sheets.asked.length,
        "can decide a danger, on the ground, met": grave.length - graveLeft.length,
        "can decide a danger, on the ground": grave.length,
        taps: hand.taps,
        "keys typed": hand.keys,
        swipes: hand.swipes,
        "screens seen": hand.screens,
        "entered in one step with others": done.swept + done.same,
      },
      note: [
        done.isThrough ? "The round came to its end." : "Time was up before the round's end.",
        ...(done.gates.length > 0 ? [`Gates passed unproven: ${done.gates.join("; ")}.`] : []),
        ...(graveLeft.length > 0 ? [`Can decide a danger and not met: ${graveLeft.map(spot).join(", ")}.`] : []),
        ...(done.clumsy.length > 0 ? [`Clumsy: ${done.clumsy.join("; ")}.`] : []),
      ].join("\n  "),
    },
    {
      what: `${person.called}: how long it takes`,
      unit: "min",
      figures: {
        "all together": walk.spent / 60,
        "looking, estimated (VO2)": done.lookSeconds / 60,
        "going there, estimated (VO5)": done.waySeconds / 60,
        "hand and mind, keystroke-level": hand.handSeconds / 60,
        "waited for the machine": hand.waitedMs / 60_000,
      },
      note: `Hand and mind ${perPoint.toFixed(1)} s a point (figures of the model from memory); nothing of it is counted as done while looking.`,
    },
  ];
}

async function walked(browser: Browser, address: string, person: Person): Promise<readonly BenchRow[]> {
  const sheets = await sheetsOfRound(person.who, person.sheets);
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  try {
    const page = await context.newPage();
    const walker = new Walker(page, address);
    await walker.newCar("Car without a record");
    await walker.newVisit({ purpose: person.purpose, who: person.who, sheets: sheets.titles });
    await page.waitForURL(/\/round\/[^/]+\/[^/]+\/[^/]+$/);
    const walk = new RoundWalk(page, sheets, person.time);
    const done = await walk.walk().catch((error: unknown) => {
      throw new Error(`${person.called}: stuck at ${page.url()}`, { cause: error });
    });
    const left = missed(sheets, done);
    if (done.isThrough && left.length > 0)
      throw new Error(`${person.called}: asked and never met: ${left.map(spot).join(", ")}`);
    if (!done.isThrough && person.time === undefined) throw new Error(`${person.called}: it came to no end`);
    return told(person, sheets, walk, done);
  } finally {
    await context.close();
  }
}

export const bench: Bench = async () => {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(NO_BROWSER);
  const serving = await serve({ port: 0 });
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS] });
  try {
    const rows: BenchRow[] = [];
    for (const person of PEOPLE) rows.push(...(await walked(browser, serving.address, person)));
    return rows;
  } finally {
    await browser.close();
    await serving.close();
  }
};
