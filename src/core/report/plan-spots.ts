/**
 * Where each place lies on the plan, for pressing, for the lamp and for its mark. Drawing units, nose left, the
 * driver's left at the bottom. Refuses to know lines.
 */
import { PLAN_HEIGHT, PLAN_WIDTH } from "./plan-pieces.js";
import type { PlanKind, PlanSide } from "./plan-terms.js";

interface Dot {
  readonly x: number;
  readonly y: number;
}

/** Middle of a place, where the lamp hangs and how wide its apex is, and where its mark stands. */
export interface Spot extends Dot {
  readonly lamp: Dot;
  /** Half width of the lamp's apex. */
  readonly half: number;
  readonly mark: readonly [number, number];
}

/** Right-hand half: middle x, y, half width, mark x, y on the chassis plan, mark x, y on the body plan. */
type Row = readonly [
  id: string,
  x: number,
  y: number,
  half: number,
  chassis: readonly [number, number],
  body: readonly [number, number],
];

/** Measured on our own drawing in plan-pieces.ts. */
const RIGHT: readonly Row[] = [
  ["F{s}", 91, 32, 18, [60, 46], [91, 56]],
  ["R{s}", 279.5, 26.5, 18, [313, 43], [300, 58]],
  ["side-{s}", 178, 29, 22, [178, 44], [178, 60]],
  ["door-{s}", 178, 32, 22, [178, 44], [178, 60]],
  ["main-rail-{s}-fore", 60, 63.5, 8, [60, 78], [60, 78]],
  ["main-rail-{s}-mid", 173, 55, 8, [173, 70], [173, 70]],
  ["main-rail-{s}-aft", 252, 61.5, 8, [252, 78], [252, 78]],
  ["sill-tube-{s}-fore", 143, 33, 8, [148, 44], [148, 44]],
  ["sill-tube-{s}-mid", 172, 33, 8, [173, 44], [173, 44]],
  ["sill-tube-{s}-aft", 203, 33, 8, [198, 44], [198, 44]],
  ["outrigger-{s}-1", 136, 44, 6, [148, 44], [148, 44]],
  ["outrigger-{s}-2", 161, 44, 6, [173, 44], [173, 44]],
  ["outrigger-{s}-3", 186, 44, 6, [198, 44], [198, 44]],
  ["outrigger-{s}-4", 211, 44, 6, [223, 44], [223, 44]],
  ["pickup-F{s}-lower-fore", 79, 61.5, 5, [70, 76], [70, 76]],
  ["pickup-F{s}-lower-aft", 103, 61.5, 5, [115, 78], [115, 78]],
  ["pickup-R{s}-lower-fore", 266, 59.5, 5, [254, 76], [254, 76]],
  ["pickup-R{s}-lower-aft", 293, 59.5, 5, [304, 76], [304, 76]],
];

/** On the middle line: id, x, half width. */
const MIDDLE: readonly (readonly [id: string, x: number, half: number])[] = [
  ["car", 178, 26],
  ["axle-F", 91, 16],
  ["axle-R", 279.5, 16],
  ["nose-box", 40, 14],
  ["xm-front-top", 46, 8],
  ["xm-front-under", 46, 8],
  ["nose-rails", 46, 8],
  ["rack-mount", 91, 10],
  ["dash-hoop", 135, 6],
  ["seat-cross", 211, 6],
  ["xm-rear", 279, 14],
  ["diff-mount", 279, 10],
  ["tail-rails", 316, 6],
];

/** The lamp hangs at the outer edge of a wheel, over the middle of anything else. */
const WHEEL_EDGE = 10;
const WHEEL = /^[FR]\{s\}$/;

const mirrored = (y: number): number => PLAN_HEIGHT - y;

function table(plan: PlanKind): ReadonlyMap<string, Spot> {
  const spots = new Map<string, Spot>();
  for (const [id, x, y, half, chassis, body] of RIGHT) {
    const [markX, markY] = plan === "chassis" ? chassis : body;
    const lampY = WHEEL.test(id) ? y - WHEEL_EDGE : y;
    spots.set(id.replace("{s}", "R"), { x, y, half, lamp: { x, y: lampY }, mark: [markX, markY] });
    spots.set(id.replace("{s}", "L"), {
      x,
      y: mirrored(y),
      half,
      lamp: { x, y: mirrored(lampY) },
      mark: [markX, mirrored(markY)],
    });
  }
  const y = PLAN_HEIGHT / 2;
  for (const [id, x, half] of MIDDLE) spots.set(id, { x, y, half, lamp: { x, y }, mark: [x + half + 10, y] });
  return spots;
}
const TABLES: Readonly<Record<PlanKind, ReadonlyMap<string, Spot>>> = {
  body: table("body"),
  chassis: table("chassis"),
};

/** Where a share of the length lies on our drawing: nose, front axle at 18, rear axle at 80, tail; even in between. */
const ALONG: readonly (readonly [share: number, x: number])[] = [
  [0, 11],
  [10, 66.7],
  [18, 91],
  [80, 279.5],
  [90, 309.9],
  [100, 348],
];
const TOP = 13;
const BOTTOM = 143;

function along(share: number): number {
  const next = Math.max(
    1,
    ALONG.findIndex(([end]) => share <= end),
  );
  const [from, x] = ALONG[next - 1] ?? [0, 11];
  const [to, end] = ALONG[next] ?? [100, 348];
  return x + ((share - from) / (to - from)) * (end - x);
}

/** From `at` (0–100 nose to tail, 0–100 left to right) to the drawing. Left lies at the bottom. */
function fromAt(at: readonly [number, number]): Spot {
  const x = along(at[0]);
  const y = BOTTOM - (at[1] / 100) * (BOTTOM - TOP);
  const inboard = y > PLAN_HEIGHT / 2 ? -14 : 14;
  return { x, y, half: 5, lamp: { x, y }, mark: [x, y + inboard] };
}

/** Whether the drawing itself has a line for this place. */
export const isDrawn = (plan: PlanKind, id: string): boolean => TABLES[plan].has(id);

/** Seen from the other side: turned by half a turn, so that the side one stands at is at the bottom. */
function turned(spot: Spot, side: PlanSide): Spot {
  if (side === "left") return spot;
  const about = (dot: Dot): Dot => ({ x: PLAN_WIDTH - dot.x, y: PLAN_HEIGHT - dot.y });
  const mark = about({ x: spot.mark[0], y: spot.mark[1] });
  return { ...about(spot), half: spot.half, lamp: about(spot.lamp), mark: [mark.x, mark.y] };
}

/** Where a place lies on the plan as it is turned; `null` when neither drawing nor `at` knows it. */
export function spotOf(plan: PlanKind, side: PlanSide, id: string, at?: readonly [number, number]): Spot | null {
  const known = TABLES[plan].get(id) ?? (at === undefined ? undefined : fromAt(at));
  return known === undefined ? null : turned(known, side);
}
