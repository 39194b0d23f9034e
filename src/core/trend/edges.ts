/** Which edges of the limits in force a reading is on its way to, and which it has passed. Knows no date. */
import type { Grade } from "../terms/index.js";
import type { Edge, Way } from "./contract.js";

/** The edges that are told of; a limit without either is told of by its gravest. */
const TOLD: readonly Grade[] = ["major", "dangerous"];
const MILDER: readonly Grade[] = ["minor", "advisory"];

interface Edges {
  /** Of each grade told of the one passed last and the next one ahead, in the order they are met. */
  readonly told: readonly Edge[];
  /** The milder edge passed last, while all that are told of lie ahead: it is past that one already. */
  readonly within?: Edge;
}

const isPast = (way: Way, at: number, value: number): boolean => (way === "down" ? value < at : value > at);

/** In the order in which wear meets them. */
const inOrder = (edges: readonly Edge[], way: Way): readonly Edge[] =>
  [...edges].sort((a, b) => (way === "down" ? b.at - a.at : a.at - b.at));

/** Of one grade the edge passed last and the next one ahead; several limits may each have one. */
function around(edges: readonly Edge[], grade: Grade, way: Way, value: number): readonly Edge[] {
  const own = inOrder(
    edges.filter((one) => one.grade === grade),
    way,
  );
  const past = own.findLast(({ at }) => isPast(way, at, value));
  const ahead = own.find(({ at }) => !isPast(way, at, value));
  return [past, ahead].flatMap((one) => (one === undefined ? [] : [one]));
}

/** The edges told of a reading of this value, and the milder one it lies beyond. */
export function edgesAround(edges: readonly Edge[], way: Way, value: number): Edges {
  const severe = TOLD.flatMap((grade) => around(edges, grade, way, value));
  // Going by the mildest would put what hardly matters before what does.
  const gravest = MILDER.find((grade) => edges.some((one) => one.grade === grade));
  const told = severe.length > 0 || gravest === undefined ? severe : around(edges, gravest, way, value);
  const milder = edges.filter((one) => MILDER.includes(one.grade) && !told.some(({ grade }) => grade === one.grade));
  const within = inOrder(milder, way).findLast(({ at }) => isPast(way, at, value));
  const isAhead = told.every(({ at }) => !isPast(way, at, value));
  return { told: inOrder(told, way), ...(within && isAhead ? { within } : {}) };
}
