/**
 * What owners say, over all shipped complaints: every way of saying it is known for what it is, everyday sentences lead
 * to the likeliest, and what is put first can be looked at. Judges no car.
 */
import { expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { complaintsIn } from "../../src/core/assess/index.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const { commonWithTexts, sheets } = result.value;
const listed = commonWithTexts.complaints;
const texts = commonWithTexts.texts["en"]?.complaints ?? {};
const points = new Map(sheets.flatMap(({ sheet }) => sheet.points.map((point) => [point.id, point] as const)));

test("every way of saying it is known, first of all for what it is", () => {
  expect(listed.length).toBeGreaterThan(70);
  const strayed = Object.entries(texts).flatMap(([id, { says }]) =>
    says.flatMap((way) => {
      const first = complaintsIn(way, texts)[0];
      return first === id ? [] : [`${way}: ${first ?? "unknown"}, not ${id}`];
    }),
  );
  expect(strayed).toEqual([]);
});

test("a way of saying it stands under one complaint only", () => {
  const ways = Object.values(texts).flatMap(({ says }) => says);
  expect(ways.filter((way, at) => ways.indexOf(way) !== at)).toEqual([]);
});

test("what a complaint puts first is a point of a sheet, and something of it is for a technician", () => {
  const bare = (name: string): string => name.split("@")[0] ?? name;
  const strange = listed.flatMap(({ id, points: first }) =>
    first.filter((name) => !points.has(bare(name))).map((name) => `${id}: ${name}`),
  );
  expect(strange).toEqual([]);
  const nothing = listed.filter(({ points: first }) =>
    first.every((name) => points.get(bare(name))?.who.includes("technician") !== true),
  );
  expect(nothing.map(({ id }) => id)).toEqual([]);
});

test("where petrol may be about, the nose comes first", () => {
  const starting = ["sym.fuel-drips", "sym.start-cold", "sym.start-hot", "sym.long-stood"];
  const first = starting.map((id) => listed.find((one) => one.id === id)?.points[0]);
  expect(first).toEqual(starting.map(() => "fuel.fuel-smell"));
});

test.each([
  ["The front left tyre goes flat every two weeks", "sym.tyre-air"],
  ["There is a bulge in one tyre", "sym.tyre-bulge"],
  ["Steering got very heavy lately", "sym.steer-heavy"],
  ["The steering wheel moves up and down", "sym.steer-wheel-loose"],
  ["Petrol is dripping under the car", "sym.fuel-drips"],
  ["It never starts when hot, have to wait: will not start hot", "sym.start-hot"],
  ["She cuts out at the lights", "sym.cuts-out"],
  ["Misfiring above 4000", "sym.misfire"],
  ["The accelerator sticks sometimes", "sym.throttle"],
  ["Blue smoke behind me after a long descent", "sym.oil-burn"],
  ["Mayonnaise under the oil filler cap", "sym.white-smoke"],
  ["Oil light comes on when it idles", "sym.oil-lamp"],
  ["It overheated in traffic", "sym.overheats"],
  ["Exhaust fumes inside with the window down", "sym.fumes"],
  ["The exhaust is blowing", "sym.exhaust-loud"],
  ["The battery is always flat after two weeks", "sym.flat-battery"],
  ["It just clicks, the starter clicks once", "sym.cranks-slow"],
  ["It loses water, about a litre a month", "sym.water-loss"],
  ["The heater blows cold since spring", "sym.heater-cold"],
  ["Clutch is slipping in fourth", "sym.clutch-slip"],
  ["It jumps out of second gear on the overrun", "sym.jumps-out"],
  ["It has stood for years in a barn", "sym.long-stood"],
  ["The brakes squeal", "sym.squeal"],
  ["My left headlight is out", "sym.lamp-out"],
  ["The headlights are very dim at night", "sym.lamp-dim"],
  ["One pop-up light will not come up when it is cold", "sym.lamp-popup"],
  ["The left indicator flashes far too fast", "sym.indicators"],
  ["My brake lights do not work, said the car behind", "sym.stop-lamps"],
  ["The horn does not work any more", "sym.horn"],
  ["The wipers smear and judder", "sym.wipers"],
  ["The seat belt will not lock when I pull it", "sym.seat-belt"],
  ["The driver's seat rocks when I brake", "sym.seat-moves"],
  ["The door popped open in a bend", "sym.door-opens"],
  ["The bonnet pops up at speed", "sym.lid-opens"],
  ["The window has dropped into the door", "sym.window-stuck"],
  ["The headlining is sagging", "sym.trim-loose"],
])("%s", (said, wanted) => {
  expect(complaintsIn(said, texts)[0]).toBe(wanted);
});
