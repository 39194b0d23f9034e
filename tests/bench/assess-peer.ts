/**
 * The load of assess-load.ts as rules of json-rules-engine: the same terms, one run a joint, only what fires is asked
 * for. It knows no third value: what is not answered is false there, and without a negation the same rules fire.
 */
import { Engine, type NestedCondition, type TopLevelCondition } from "json-rules-engine";
import type { AssessInput } from "../../src/core/assess/index.js";
import { pointId, RULE_TERMS, type Term } from "./assess-load.js";

const FIRED = "fired";

const condition = ({ point, words }: Term): NestedCondition => ({
  fact: pointId(point),
  operator: "in",
  value: [...words],
});

/** Joined from the left, in brackets, as our rules are. */
function conditionsOf([first, ...rest]: readonly Term[]): TopLevelCondition {
  const start: TopLevelCondition = { all: first === undefined ? [] : [condition(first)] };
  return rest.reduce<TopLevelCondition>(
    (left, term) => (term.join === "&&" ? { all: [left, condition(term)] } : { any: [left, condition(term)] }),
    start,
  );
}

/** The rules made ready once, as ours are: gives what fires in a visit, `RULE@JOINT`. */
export function peerEngine(): (input: AssessInput) => Promise<readonly string[]> {
  const engine = new Engine(
    RULE_TERMS.map((terms, i) => ({
      conditions: conditionsOf(terms),
      event: { type: FIRED, params: { rule: `lod.r${i}` } },
    })),
    { allowUndefinedFacts: true },
  );
  return async (input) => {
    const joints = new Map<string, Record<string, string>>();
    for (const { key, value } of input.replies) {
      const said = joints.get(key.place) ?? {};
      if (value.type === "words") said[key.point] = value.words[0] ?? "";
      joints.set(key.place, said);
    }
    const fired: string[] = [];
    for (const [joint, said] of joints) {
      const { events } = await engine.run(said);
      for (const { params } of events) fired.push(`${params?.["rule"]}@${joint}`);
    }
    return fired;
  };
}
