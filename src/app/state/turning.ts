/**
 * At which frequencies a wheel and its bearing would be heard: from the speed or from turning by hand, the tyre, and the
 * bearing's own figures. Each is a stretch, because no speed is known to the point. Pure; judges nothing.
 */
import { TRADE_WORK } from "../../core/trade/index.js";

/** As typed. */
export interface TurningForm {
  /** Seconds for ten turns by hand; counts before the speed. */
  readonly ten: string;
  /** km/h by the car's own speedometer. */
  readonly speed: string;
  /** As on the side of the tyre: 185/60 R14. */
  readonly tyre: string;
  readonly balls: string;
  /** mm */
  readonly ball: string;
  /** mm */
  readonly pitch: string;
  /** Degrees. */
  readonly angle: string;
  /** Which ring turns with the wheel. */
  readonly ring: "outer" | "inner";
}
export const NO_TURNING: TurningForm = {
  ten: "",
  speed: "",
  tyre: "",
  balls: "",
  ball: "",
  pitch: "",
  angle: "",
  ring: "outer",
};

export type TurningMark = "turns" | "turns-twice" | "cage" | "outer" | "inner" | "element";
/** Hz; `about`: from the number of rolling elements alone. */
export interface MarkAt {
  readonly id: TurningMark;
  readonly from: number;
  readonly to: number;
  readonly about: boolean;
}
export interface Turning {
  readonly marks: readonly MarkAt[];
  /** Fields whose text can't be read, or lies out of range. */
  readonly unread: readonly (keyof TurningForm)[];
}

/** A field as a number over nought; undefined where it is empty, NaN where it can't be read. */
function typed(text: string): number | undefined {
  if (text.trim() === "") return undefined;
  const found = /^\d{1,4}(?:[.,]\d{1,3})?$/.test(text.trim()) ? Number(text.trim().replace(",", ".")) : Number.NaN;
  return found > 0 ? found : Number.NaN;
}

/** What a trade function gives; undefined where it refuses. */
function worked(name: string, ...given: readonly (number | string)[]): number | undefined {
  const answer = TRADE_WORK[name]?.(given);
  return answer?.ok && typeof answer.value === "number" ? answer.value : undefined;
}

const TYRE = /^\s*(\d{3})\s*\/\s*(\d{2,3})\s*[A-Z]{0,2}\s*-?\s*(\d{2,3}(?:[.,]\d)?)\s*$/i;
/** Rims are written in inches up to this, else in millimetres. */
const MOST_INCHES = 30;

/** Rolling circumference in mm of a radial tyre as written on it; NaN where that can't be read. */
function circumferenceOf(text: string): number | undefined {
  if (text.trim() === "") return undefined;
  const [, section, aspect, rim] = TYRE.exec(text) ?? [];
  if (section === undefined || aspect === undefined || rim === undefined) return Number.NaN;
  const size = Number(rim.replace(",", "."));
  const mm = size <= MOST_INCHES ? worked("inches", size) : size;
  const across = mm === undefined ? undefined : worked("tyre_diameter", Number(section), Number(aspect), mm);
  return (across === undefined ? undefined : worked("rolling_circumference", across, "radial")) ?? Number.NaN;
}

/**
 * A speedometer may never show less than the speed and at most a tenth and 4 km/h more: UN Regulation 39, 5.4
 * (V1 the shown, V2 the true: 0 ≤ V1 − V2 ≤ V2 / 10 + 4 km/h), from memory.
 */
const slowest = (shown: number): number => Math.max(1, (shown - 4) / 1.1);
/** How evenly ten turns are made and timed by hand. Own choice. */
const BY_HAND = 0.05;
/** Real bearings slip by up to so much from their geometry; the share by number alone is rougher. From memory. */
const SLIP = 0.03;
const ROUGH = 0.1;
/** Of rolling elements passing a spot of the outer and the inner race a turn. Common practice, no source. */
const SHARE = { outer: 0.4, inner: 0.6 } as const;

/** Turns a second, slowest and fastest. */
function turnsOf(form: TurningForm, circumference: number | undefined): readonly [number, number] | undefined {
  const [ten, speed] = [typed(form.ten), typed(form.speed)];
  if (ten !== undefined) return ten > 0 ? [(10 / ten) * (1 - BY_HAND), (10 / ten) * (1 + BY_HAND)] : undefined;
  if (speed === undefined || circumference === undefined) return undefined;
  const [low, high] = [slowest(speed), speed].map((kmh) => worked("turns_by_speed", kmh, circumference));
  return low === undefined || high === undefined ? undefined : [low, high];
}

const stretch = (id: TurningMark, low: number, high: number, slip: number, about = false): MarkAt => ({
  id,
  from: low * (1 - slip),
  to: high * (1 + slip),
  about,
});

function bearingMarks(form: TurningForm, low: number, high: number): readonly MarkAt[] {
  const [balls, ball, pitch] = [typed(form.balls), typed(form.ball), typed(form.pitch)];
  if (balls === undefined) return [];
  if (ball === undefined || pitch === undefined)
    return (["outer", "inner"] as const).map((race) => {
      const share = SHARE[race] * balls;
      return stretch(race, low * share, high * share, ROUGH, true);
    });
  const angle = typed(form.angle) ?? 0;
  const passing = (name: string, ...given: readonly number[]) =>
    [low, high].map((hz) => worked(name, ...given, ball, pitch, angle, hz));
  const named: readonly (readonly [TurningMark, readonly (number | undefined)[]])[] = [
    ["cage", [low, high].map((hz) => worked("cage_frequency", ball, pitch, angle, hz, form.ring))],
    ["outer", passing("outer_race_frequency", balls)],
    ["inner", passing("inner_race_frequency", balls)],
    // A spot on a rolling element strikes both races in each of its turns.
    ["element", passing("rolling_element_frequency").map((hz) => (hz === undefined ? undefined : 2 * hz))],
  ];
  return named.flatMap(([id, [from, to]]) =>
    from === undefined || to === undefined ? [] : [stretch(id, from, to, SLIP)],
  );
}

const FIGURES = ["ten", "speed", "balls", "ball", "pitch", "angle"] as const;

/** What a form comes to: as many marks as its fields allow, and which fields can't be read. */
export function turning(form: TurningForm): Turning {
  const circumference = circumferenceOf(form.tyre);
  const unread: (keyof TurningForm)[] = FIGURES.filter((field) => Number.isNaN(typed(form[field])));
  if (Number.isNaN(circumference)) unread.push("tyre");
  const turns = unread.length > 0 ? undefined : turnsOf(form, circumference);
  if (!turns) return { marks: [], unread };
  const [low, high] = turns;
  const own = [stretch("turns", low, high, 0), stretch("turns-twice", 2 * low, 2 * high, 0)];
  const bearing = bearingMarks(form, low, high);
  // A ball as large as the row's own pitch is no bearing: its trade function refuses, and the box says so.
  const isNone = form.balls !== "" && form.ball !== "" && form.pitch !== "" && bearing.length === 0;
  return { marks: [...own, ...bearing], unread: isNone ? ["ball"] : [] };
}

/** A form kept as text, or an empty one for anything else that stands in its place. */
export function turningTyped(text: string): TurningForm {
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return NO_TURNING;
  }
  const found = typeof kept === "object" && kept !== null ? new Map(Object.entries(kept)) : new Map<string, unknown>();
  const field = (name: string): string => {
    const value = found.get(name);
    return typeof value === "string" ? value : "";
  };
  return {
    ten: field("ten"),
    speed: field("speed"),
    tyre: field("tyre"),
    balls: field("balls"),
    ball: field("ball"),
    pitch: field("pitch"),
    angle: field("angle"),
    ring: field("ring") === "inner" ? "inner" : "outer",
  };
}
