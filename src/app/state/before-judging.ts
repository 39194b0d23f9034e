/**
 * A visit in which nothing is entered yet: what is asked first, in walking order, before anything can be judged.
 * Points that wait for another reply come once judging runs; car states a gate guards wait for it as well.
 */
import type { Asked, Assessment } from "../../core/assess/contract.js";
import { type PlaceTree, walk } from "../../core/sheet/run.js";
import type { Audience } from "../../core/terms/index.js";
import { guards } from "./gates.js";
import type { Knowledge } from "./knowledge.js";

function askedFirst(known: Knowledge, tree: PlaceTree, who: Audience): readonly Asked[] {
  const points = [...known.points.values()].map(({ point }) => point);
  const gates = [...known.gates.values()];
  const isGuarded = (state: string): boolean => {
    const carState = known.states.get(state);
    return carState === undefined || gates.some((gate) => guards(gate, carState));
  };
  return walk(points, known.common.states, tree).flatMap((step): readonly Asked[] => {
    const point = known.points.get(step.point)?.point;
    if (!point || isGuarded(step.state) || point["asked-when"] !== undefined || !point.who.includes(who)) return [];
    const fields = Object.keys(point.fields);
    return [{ ...step, fields, with: [], safetyCritical: point["safety-critical"] === true, openedBy: [] }];
  });
}

/** The empty judgement of a visit without a reply: no finding, nothing sound, only what is asked first. */
export const nothingJudged = (known: Knowledge, tree: PlaceTree, who: Audience): Assessment => ({
  engine: "",
  findings: [],
  faults: [],
  gates: [],
  cautions: [],
  settle: [],
  open: [],
  coverage: [],
  points: [],
  asked: askedFirst(known, tree, who),
  suggested: [],
  orders: [],
  readings: [],
  problems: [],
});
