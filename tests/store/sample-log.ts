/** A log in the making, for tests: each draft is made in view of what stands so far. */
import {
  type CarState,
  type Draft,
  type Entry,
  foldCar,
  foldPlan,
  foldVisit,
  type IdText,
  idText,
  type Logged,
  type PlanState,
  type VisitState,
} from "../../src/core/record/index.js";

export class SampleLog {
  readonly entries: Logged[] = [];

  constructor(readonly stream = "visit:v") {}

  get visit(): VisitState {
    return this.entries.length === 0 ? { ...foldVisit([]), stream: this.stream } : foldVisit(this.entries);
  }

  get car(): CarState {
    return this.entries.length === 0 ? { ...foldCar([]), stream: this.stream } : foldCar(this.entries);
  }

  get plan(): PlanState {
    return { ...foldPlan(this.entries), stream: this.stream };
  }

  /** Adds drafts as the next entries of a writer, or under a number of choice; gives the id of the first. */
  add(drafts: Draft | readonly Draft[], writer = "w1", seq?: number): IdText {
    const ids = [drafts].flat().map((draft) => {
      const entry: Entry = { ...draft, writer, seq: seq ?? this.last(draft.stream, writer) + 1 };
      this.entries.push(entry);
      return idText(entry);
    });
    const [first] = ids;
    if (first === undefined) throw new Error("no draft");
    return first;
  }

  last(stream: string, writer: string): number {
    return Math.max(
      0,
      ...this.entries.filter((one) => one.stream === stream && one.writer === writer).map(({ seq }) => seq),
    );
  }

  entry(id: IdText): Logged {
    const found = this.entries.find((one) => idText(one) === id);
    if (!found) throw new Error(`${id} is not in the log`);
    return found;
  }
}
