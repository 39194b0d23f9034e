/** Which edges of the limits in force a reading is on its way to. Knows no date. */
import type { Grade } from "../terms/index.js";
import type { Edge, Way } from "./contract.js";

/** The edges that are told of; a limit without either is told of by its gravest. */
const TOLD: readonly Grade[] = ["major", "dangerous"];
const MILDER: readonly Grade[] = ["minor", "advisory"];

/** Of one grade the edge that is met first. */
function firstMet(edges: readonly Edge[], grade: Grade, way: Way): Edge | undefined {
  const sign = way === "down" ? -1 : 1;
  return edges.filter((one) => one.grade === grade).sort((a, b) => sign * (a.at - b.at))[0];
}

/** The major and the dangerous edge, each where it is met first; of limits with neither, the gravest. */
export function edgesAhead(edges: readonly Edge[], way: Way): readonly Edge[] {
  const of = (grade: Grade): readonly Edge[] => {
    const edge = firstMet(edges, grade, way);
    return edge === undefined ? [] : [edge];
  };
  const told = TOLD.flatMap(of);
  return told.length > 0 ? told : MILDER.flatMap(of).slice(0, 1);
}
