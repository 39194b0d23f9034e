/**
 * Writes down what was asked and keeps what was worked out, with what it rests on. Values that rest on differing
 * replies are kept only for the choice at hand. Answers no question itself.
 */
import type { Problem } from "../terms/index.js";
import type { Given } from "./given.js";
import type { RefInfo } from "./model.js";
import type { Site } from "./site.js";

/** Something worked out, and the nodes it rests on in the order they were asked. */
export interface Kept<T = unknown> {
  readonly value: T;
  readonly reads: readonly number[];
  readonly problems: readonly Problem[];
}
export type Records = (Kept | undefined)[];

export const NO_PROBLEMS: readonly Problem[] = [];
/** No choice made: the first of several standing values. */
export const FIRST: ReadonlyMap<number, number> = new Map();

export class Ledger {
  problems: Problem[] = [];
  /** Whether something read since the question began has several standing replies. */
  torn = false;
  /** Slots and facts with several standing values met so far, and how many each has. */
  readonly met = new Map<number, number>();
  /** Which of the standing values counts, by node; the first where none is named. */
  choice: ReadonlyMap<number, number> = FIRST;
  /** A band finding takes the worse end of this reading. */
  worseEnd: RefInfo | undefined;
  /** First pass: readings before any is discarded. */
  raw = false;

  /** Nodes read, one after the other: one list for all questions, each with its own stretch of it. */
  private readonly log: number[] = [];
  private end = 0;
  private readonly torn_: readonly [Map<number, Kept>, Map<number, Kept>] = [new Map(), new Map()];
  /** Being worked out: as the passes see it, and before discards. */
  private readonly busy = [new Set<number>(), new Set<number>()] as const;

  constructor(
    readonly site: Site,
    readonly given: Given,
    /** Kept between assessments. */
    readonly records: Records,
    /** The same, before discards. */
    readonly rawRecords: Records,
  ) {}

  /** Takes another choice among differing replies; what rested on the last one is forgotten. */
  choose(choice: ReadonlyMap<number, number>): void {
    this.choice = choice;
    this.torn_[0].clear();
    this.torn_[1].clear();
  }

  /** Writes down that a node was read. */
  note(node: number): void {
    this.log[this.end] = node;
    this.end += 1;
  }

  /** Where the list of reads ends now. */
  mark(): number {
    return this.end;
  }

  /** Nodes read since a mark. */
  since(mark: number): readonly number[] {
    return this.log.slice(mark, this.end);
  }

  /** Begins a question: nothing read yet, the first of differing replies. */
  begin(): void {
    this.end = 0;
    if (this.problems.length > 0) this.problems = [];
    this.torn = false;
    if (this.choice.size > 0) this.choose(FIRST);
  }

  /** Runs with a list of reads of its own; the caller decides what becomes of it. */
  apart<T>(work: () => T): Kept<T> & { readonly torn: boolean } {
    const { problems, torn, end } = this;
    this.problems = [];
    this.torn = false;
    const value = work();
    const kept = { value, reads: this.since(end), problems: this.problems, torn: this.torn };
    this.end = end;
    this.problems = problems;
    this.torn = torn;
    return kept;
  }

  /** A kept value of a node, worked out when it is not there yet. */
  keep<T>(node: number, work: () => T): T {
    const records = this.raw ? this.rawRecords : this.records;
    const torn = this.torn_[this.raw ? 1 : 0];
    const busy = this.busy[this.raw ? 1 : 0];
    const known = records[node];
    this.note(node);
    // a node is always worked out by the same function, so its record holds that function's type
    if (known !== undefined) return known.value as T;
    let kept = torn.get(node);
    if (kept !== undefined) this.meetAgain(kept.reads);
    else {
      if (busy.has(node)) throw new Error("a derived value rests on itself: the sheet was not checked");
      busy.add(node);
      const worseEnd = this.worseEnd;
      this.worseEnd = undefined;
      const done = this.apart(work);
      this.worseEnd = worseEnd;
      busy.delete(node);
      kept = {
        value: done.value,
        reads: [...new Set(done.reads)],
        problems: done.problems.length === 0 ? NO_PROBLEMS : done.problems,
      };
      if (!done.torn) {
        records[node] = kept;
        return done.value;
      }
      torn.set(node, kept);
    }
    this.torn = true;
    for (const read of kept.reads) this.note(read);
    return kept.value as T;
  }

  /** A value rests on differing replies also when it is taken from an earlier question. */
  private meetAgain(reads: readonly number[]): void {
    for (const id of reads) {
      const several = this.standingAt(id)?.length ?? 0;
      if (several > 1) this.met.set(id, several);
    }
  }

  /** What stands in a slot or for a fact, or stood there last; one of several is the choice at hand. */
  private standingAt(id: number): readonly unknown[] | undefined {
    const node = this.site.nodes[id];
    if (node?.kind === "last") return this.given.earlier(node)?.standing;
    return this.given.replies[id] ?? this.given.facts[id];
  }

  /** The kept value of a node under the choice at hand; undefined when it was not asked. */
  keptOf(node: number): Kept | undefined {
    const at = this.raw ? 1 : 0;
    return (this.raw ? this.rawRecords : this.records)[node] ?? this.torn_[at].get(node);
  }

  protected pick<T>(node: number, standing: readonly T[] | undefined): T | undefined {
    this.note(node);
    if (standing === undefined) return undefined;
    if (standing.length === 1) return standing[0];
    this.torn = true;
    this.met.set(node, standing.length);
    return standing[this.choice.get(node) ?? 0];
  }

  /** Slots and facts under a list of reads, each once; the list itself where nothing else was read. */
  slotsUnder(reads: readonly number[]): readonly number[] {
    const { leaves } = this.site;
    for (const id of reads) if (id >= leaves) return this.leavesUnder(reads, new Set());
    return reads;
  }

  private leavesUnder(reads: readonly number[], seen: Set<number>): readonly number[] {
    const out: number[] = [];
    for (const id of reads) {
      if (seen.has(id)) continue;
      seen.add(id);
      const node = this.site.nodes[id];
      if (node?.kind === "slot" || node?.kind === "fact") out.push(id);
      else {
        const kept = this.keptOf(id);
        if (kept !== undefined) out.push(...this.leavesUnder(kept.reads, seen));
      }
    }
    return out;
  }
}
