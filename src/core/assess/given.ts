/**
 * What is given for one assessment, laid into the slots of a site: replies that stand, car facts, the limits book.
 * What it cannot place is told, never dropped in silence.
 */
import { keyText, type Problem, problem } from "../terms/index.js";
import { alternatives } from "./alternatives.js";
import { type Book, type Facts, layBook, layFacts } from "./car-given.js";
import type { AssessInput, StandingReply } from "./contract.js";
import { type Earlier, kilometres, layEarlier } from "./earlier.js";
import { plainId } from "./model.js";
import type { Site } from "./site.js";
import { type Standing, understand } from "./understand.js";

export interface Given {
  /** By node id of slots. */
  readonly replies: readonly (readonly Standing[] | undefined)[];
  readonly facts: Facts;
  readonly book: Book;
  readonly earlier: Earlier;
  /** Of this visit, in km. */
  readonly odometer: number | undefined;
  readonly problems: readonly Problem[];
}

/** Lays the input into the site. `before`: replies already understood are not read again. */
export function layOut(site: Site, input: AssessInput, before?: Given): Given {
  const problems: Problem[] = [];
  return {
    replies: layReplies(site, input.replies, problems, before),
    facts: layFacts(site, input, problems),
    book: layBook(site.model, input.car.limits, problems),
    earlier: layEarlier(site, input),
    odometer: kilometres(input.odometer),
    problems,
  };
}

function layReplies(
  site: Site,
  replies: readonly StandingReply[],
  problems: Problem[],
  before?: Given,
): Given["replies"] {
  const out = new Array<readonly Standing[] | undefined>(site.leaves).fill(undefined);
  const several = new Set<number>();
  for (const reply of replies) {
    const { key, value } = reply;
    const point = site.model.pointById.get(key.point) ?? site.model.pointById.get(plainId(key.point));
    const spot = point === undefined ? undefined : site.spotsOf(point).get(key.place);
    if (point === undefined || spot === undefined) {
      problems.push(
        problem(
          "assess.reply-nowhere",
          {},
          { reply: reply.id, key: keyText(key), what: point === undefined ? "point" : "place" },
        ),
      );
      continue;
    }
    let laid = false;
    for (const slot of spot.slots) {
      if (value.type !== "non-answer" && slot.field.name !== key.field) continue;
      laid = true;
      const was = before?.replies[slot.id];
      const standing = was?.find((s) => s.from === reply) ?? understand(site.model, slot, reply);
      if (standing.problems.length > 0) problems.push(...standing.problems);
      const row = out[slot.id];
      // the very list of before tells at a glance that nothing changed here
      if (row === undefined) out[slot.id] = was?.length === 1 && was[0] === standing ? was : [standing];
      else {
        out[slot.id] = [...row, standing];
        several.add(slot.id);
      }
    }
    if (!laid)
      problems.push(problem("assess.reply-nowhere", {}, { reply: reply.id, key: keyText(key), what: "field" }));
  }
  for (const id of several) out[id] = alternatives(out[id] ?? []);
  return out;
}
