/**
 * The lines of the plan, drawn by us: an invented low-volume mid-engined two-seater in 360 × 156 units, nose left,
 * the driver's left at the bottom. Says which places each line stands for; refuses to know how they stand.
 */
import { type Shape, shape } from "./tree.js";

export const PLAN_WIDTH = 360;
export const PLAN_HEIGHT = 156;

/**
 * One line of the drawing. `places`: groups of ids (or beginnings of ids ending in `*`), nearest first; the first
 * group with a place of this visit decides. `{s}` stands for the side, L or R.
 */
export interface Piece {
  readonly shape: Shape;
  readonly places: readonly (readonly string[])[];
  /** Drawn on the other side too, with L for R. */
  readonly mirrored?: boolean;
  /** Only drawn when one of its places is in the visit. */
  readonly onlyIfAsked?: boolean;
}

const line = (d: string): Shape => shape("path", { d });
const box = (x: number, y: number, width: number, height: number, rx: number): Shape =>
  shape("rect", { x, y, width, height, rx });

const CAR = ["car"];

/** Outline and wheels: part of both plans. Right-hand half; the other is its mirror. */
const OUTLINE: readonly Piece[] = [
  {
    shape: line("M45 126C25 119 11 101 11 78C11 55 25 37 45 30"),
    places: [["nose-box", "lamp-bowl-*"], ["axle-F"], CAR],
  },
  {
    shape: line("M337 31C345 43 348 59 348 78C348 97 345 113 337 125"),
    places: [["boot-*"], ["axle-R"], CAR],
  },
  {
    shape: line("M48 28.9C62 24.2 76 21.4 91 21.4C104 21.4 116 22.4 127 23.6"),
    places: [["F{s}"]],
    mirrored: true,
  },
  {
    shape: line("M130 23.9C148 25.8 166 27 183 26.4C200 25.7 213 22.8 226 19.2"),
    places: [["door-{s}", "sill-tube-{s}-*"], ["side-{s}"], CAR],
    mirrored: true,
  },
  {
    shape: line("M229 18.4C245 14.6 262 12.8 280 12.8C303 12.8 321 18.4 335 28.6"),
    places: [["R{s}"]],
    mirrored: true,
  },
  { shape: box(72, 25, 38, 14, 4), places: [["F{s}"]], mirrored: true },
  { shape: box(258, 17.5, 43, 18, 4), places: [["R{s}"]], mirrored: true },
];

/** What one sees standing beside the car. */
export const BODY: readonly Piece[] = [
  ...OUTLINE,
  { shape: line("M23 54C31 51 38 46 43 39"), places: [["lamp-bowl-{s}"], ["nose-box"], CAR], mirrored: true },
  {
    shape: line("M58 47C76 42.5 100 42.5 119 45"),
    places: [["nose-box", "scuttle-*"], ["axle-F"], CAR],
    mirrored: true,
  },
  { shape: line("M58 47C53 64 53 92 58 109"), places: [["nose-box"], ["axle-F"], CAR] },
  {
    shape: line("M130 43C119 60 119 96 130 113M160 50C154 64 154 92 160 106"),
    places: [["scuttle-*", "foot-*"], CAR],
  },
  {
    shape: line("M204 50C209 64 209 92 204 106M236 45C242 62 242 94 236 111"),
    places: [["behind-seat-*", "seat-*"], CAR],
  },
  {
    shape: line("M130 43C158 35.5 208 35.5 236 45M160 50H204M130 43L160 50M236 45L204 50"),
    places: [["door-{s}", "seat-{s}", "foot-F{s}"], ["side-{s}"], CAR],
    mirrored: true,
  },
  { shape: line("M213 33.5C218 30.5 224 28.5 231 27.5"), places: [["side-{s}"], CAR], mirrored: true },
  {
    shape: line("M247 46C272 43.5 303 45.5 324 52"),
    places: [["boot-*", "engine-mount-*"], ["axle-R"], CAR],
    mirrored: true,
  },
  { shape: line("M324 52C328 66 328 90 324 104"), places: [["boot-*"], ["axle-R"], CAR] },
  { shape: line("M256 64V92M264 64V92M272 64V92M280 64V92"), places: [["engine-mount-*"], CAR] },
];

/** What one sees from below: rails, sills, outriggers, cross tubes, arms and their pick-ups. */
export const CHASSIS: readonly Piece[] = [
  ...OUTLINE,
  { shape: line("M40 61.5H110M40 65.5H110"), places: [["main-rail-{s}-fore"], ["side-{s}"], CAR], mirrored: true },
  {
    shape: line("M114 61L132 53H214L232 59M114 65L133 57H213L232 63"),
    places: [["main-rail-{s}-mid"], ["side-{s}"], CAR],
    mirrored: true,
  },
  { shape: line("M236 59.5H320M236 63.5H320"), places: [["main-rail-{s}-aft"], ["side-{s}"], CAR], mirrored: true },
  { shape: line("M122 31H151M122 34.5H151"), places: [["sill-tube-{s}-fore"], ["side-{s}"], CAR], mirrored: true },
  { shape: line("M155 31H186M155 34.5H186"), places: [["sill-tube-{s}-mid"], ["side-{s}"], CAR], mirrored: true },
  { shape: line("M190 31H222M190 34.5H222"), places: [["sill-tube-{s}-aft"], ["side-{s}"], CAR], mirrored: true },
  ...[136, 161, 186, 211].map(
    (x, i): Piece => ({
      shape: line(`M${x} 53V34.5`),
      places: [[`outrigger-{s}-${i + 1}`], ["outrigger-{s}-*"], ["side-{s}"], CAR],
      mirrored: true,
    }),
  ),
  {
    shape: line("M44 65.5V90.5M48 65.5V90.5"),
    places: [["xm-front-top", "xm-front-under", "nose-rails"], ["axle-F"], CAR],
  },
  {
    shape: line("M77 65.5V90.5M81 65.5V90.5M101 65.5V90.5M105 65.5V90.5"),
    places: [["rack-mount", "xm-front-*"], ["axle-F"], CAR],
  },
  { shape: line("M133 57V99M137 57V99"), places: [["dash-hoop"], CAR] },
  { shape: line("M209 57V99M213 57V99"), places: [["seat-cross"], CAR] },
  { shape: line("M240 63.5V92.5M244 63.5V92.5"), places: [["engine-mount-*"], CAR] },
  {
    shape: line("M264 63.5V92.5M268 63.5V92.5M291 63.5V92.5M295 63.5V92.5"),
    places: [["xm-rear", "diff-mount"], ["axle-R"], CAR],
  },
  { shape: line("M314 63.5V92.5M318 63.5V92.5"), places: [["tail-rails"], ["axle-R"], CAR] },
  { shape: line("M91 39L79 60.5M91 39L103 60.5"), places: [["F{s}"]], mirrored: true },
  { shape: line("M279.5 35.5L266 58.5M279.5 35.5L293 58.5"), places: [["R{s}"]], mirrored: true },
  ...pickups(),
];

/** Small squares at the chassis ends of the arms; each its own place. */
function pickups(): readonly Piece[] {
  const ends: readonly (readonly [string, number, number])[] = [
    ["F{s}-*-fore", 79, 61.5],
    ["F{s}-*-aft", 103, 61.5],
    ["R{s}-*-fore", 266, 59.5],
    ["R{s}-*-aft", 293, 59.5],
  ];
  return ends.map(
    ([id, x, y]): Piece => ({
      shape: box(x - 3, y - 3, 6, 6, 0),
      places: [[`pickup-${id}`]],
      mirrored: true,
      onlyIfAsked: true,
    }),
  );
}

/** Thin lines that give bearings only: engine and gearbox behind the seats, tank, radiator, cabin. Never a place. */
export const GHOST: readonly Shape[] = [
  line("M19 62V94M24 60V96M19 62L24 60M19 94L24 96"),
  line("M224 66H257V90H224ZM257 69L300 73.5V82.5L257 87"),
  line("M217 62H222V94H217Z"),
  line(
    "M130 43C119 60 119 96 130 113M236 45C242 62 242 94 236 111M130 43C158 36 208 36 236 45M130 113C158 120 208 120 236 111",
  ),
];
