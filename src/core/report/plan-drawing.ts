/**
 * The plan of the car: body seen from above, or chassis seen through it, turned so that the side one stands at lies
 * at the bottom. An invented low-volume mid-engined sports car. Knows places by id and by `at`; refuses to know
 * screens, colours and what was found.
 */
import { MARK_HEIGHT, MARK_WIDTH, type MarkKind, markShapes } from "./marks.js";
import { coneShapes } from "./plan-cone.js";
import { BODY, CHASSIS, GHOST, type Piece, PLAN_HEIGHT, PLAN_WIDTH } from "./plan-pieces.js";
import { isDrawn, type Spot, spotOf } from "./plan-spots.js";
import type { PlaceLook, PlanKind, PlanPlace, PlanSide } from "./plan-terms.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

export type { PlaceLook, PlanKind, PlanPlace, PlanSide } from "./plan-terms.js";

export interface PlanInput {
  readonly plan: PlanKind;
  readonly side: PlanSide;
  readonly places: readonly PlanPlace[];
  /** Look of lines no place of this visit stands for; default `ghost`, thin and solid. */
  readonly rest?: "ghost" | "not-looked" | "done" | undefined;
  /** With room below and the cone of the place one is at. */
  readonly cone?: boolean | undefined;
}

export interface PlanDrawing {
  readonly drawing: Drawing;
  /** Middle of every place that lies on the plan, in units of the drawing, for pressing. */
  readonly spots: readonly { readonly id: string; readonly x: number; readonly y: number }[];
}

/** With the cone the plan is set into a wider, higher box: margins and the way down to the pool. */
const CONE_BOX = { width: 390, height: 184, left: 20, top: 1.7, scale: 350 / PLAN_WIDTH };

const matches = (pattern: string, id: string): boolean => {
  const star = pattern.indexOf("*");
  if (star < 0) return id === pattern;
  return id.startsWith(pattern.slice(0, star)) && id.endsWith(pattern.slice(star + 1));
};

/** Warm when one is at any of them, inked when all are done; `null` when no place of the visit stands for the line. */
function lookOf(piece: Piece, side: "L" | "R", places: readonly PlanPlace[]): PlaceLook | null {
  for (const group of piece.places) {
    const patterns = group.map((p) => p.replace("{s}", side));
    const met = places.filter((place) => patterns.some((p) => matches(p, place.id)));
    if (met.length === 0) continue;
    if (met.some((p) => p.look === "here")) return "here";
    return met.every((p) => p.look === "done") ? "done" : "not-looked";
  }
  return null;
}

const LAYERS: readonly (PlaceLook | "ghost")[] = ["ghost", "not-looked", "done", "here"];

/** All lines of the car as it lies nose left, sorted so that inked lines cover dotted ones and warm ones all. */
function lines(input: PlanInput): readonly Shape[] {
  const layers = new Map<string, Shape[]>(LAYERS.map((look) => [look, []]));
  const put = (look: string, drawn: Shape, mirrored: boolean): void => {
    const turn = mirrored ? { transform: `matrix(1 0 0 -1 0 ${PLAN_HEIGHT})` } : {};
    layers.get(look)?.push(shape(drawn.tag, { ...drawn.attrs, ...turn, class: look }, drawn.children));
  };
  if (input.plan === "chassis") for (const ghost of GHOST) put("ghost", ghost, false);
  for (const piece of input.plan === "body" ? BODY : CHASSIS) {
    const sides: readonly ("L" | "R")[] = piece.mirrored ? ["R", "L"] : ["R"];
    for (const side of sides) {
      const look = lookOf(piece, side, input.places);
      if (look === null && piece.onlyIfAsked) continue;
      put(look ?? input.rest ?? "ghost", piece.shape, side === "L");
    }
  }
  return [...layers.values()].flat();
}

/** A small cross-tube end for a place only this car has. */
const addedPlace = (spot: Spot, look: PlaceLook): Shape =>
  shape("rect", { class: look, x: n(spot.x - 3), y: n(spot.y - 3), width: 6, height: 6 });

const MARK_SCALE = 0.8;
const BESIDE = 8;
function markAt([x, y]: readonly [number, number], mark: MarkKind): Shape {
  const left = n(x - (MARK_WIDTH * MARK_SCALE) / 2);
  const top = n(y - (MARK_HEIGHT * MARK_SCALE) / 2);
  return shape("g", { class: "mark", transform: `translate(${left} ${top}) scale(${MARK_SCALE})` }, markShapes(mark));
}

/** In the middle of its place, or beside the mark that stands there. */
function letterAt([x, y]: readonly [number, number], letter: string, mark: MarkKind | undefined): Shape {
  const at = mark === undefined ? { x: n(x), "text-anchor": "middle" } : { x: n(x + BESIDE), "text-anchor": "start" };
  return shape("text", { class: "letter", ...at, y: n(y + 4) }, [letter]);
}

/** The plan with its places; marks and letters stand upright whichever way the car lies. */
export function planDrawing(input: PlanInput): PlanDrawing {
  const { plan, side, places } = input;
  const found = places.flatMap((place) => {
    const spot = spotOf(plan, side, place.id, place.at);
    return spot === null ? [] : [{ place, spot }];
  });
  const turn = side === "right" ? { transform: `rotate(180 ${PLAN_WIDTH / 2} ${PLAN_HEIGHT / 2})` } : {};
  const car = [
    shape("g", turn, lines(input)),
    ...found.filter((f) => !isDrawn(plan, f.place.id)).map((f) => addedPlace(f.spot, f.place.look)),
    ...found.flatMap(({ place, spot }) => (place.mark === undefined ? [] : [markAt(spot.mark, place.mark)])),
    ...found.flatMap(({ place, spot }) =>
      place.letter === undefined ? [] : [letterAt(spot.mark, place.letter, place.mark)],
    ),
  ];
  if (!input.cone) {
    return {
      drawing: { width: PLAN_WIDTH, height: PLAN_HEIGHT, shapes: car },
      spots: found.map(({ place, spot }) => ({ id: place.id, x: spot.x, y: spot.y })),
    };
  }
  const { width, height, left, top, scale } = CONE_BOX;
  const inBox = (spot: { x: number; y: number }): { x: number; y: number } => ({
    x: left + spot.x * scale,
    y: top + spot.y * scale,
  });
  const here = found.find((f) => f.place.look === "here");
  const cone =
    here === undefined ? [] : coneShapes({ ...inBox(here.spot.lamp), half: here.spot.half * scale, width, height });
  return {
    drawing: {
      width,
      height,
      shapes: [...cone, shape("g", { transform: `translate(${left} ${top}) scale(${scale.toFixed(4)})` }, car)],
    },
    spots: found.map(({ place, spot }) => ({ id: place.id, ...inBox(spot) })),
  };
}

/** The small car of a list: body plan, inked when the car was ever looked at. */
export function smallCarDrawing(looked: boolean): Drawing {
  return planDrawing({ plan: "body", side: "left", places: [], rest: looked ? "done" : "not-looked" }).drawing;
}
