/**
 * Answers what conditions ask, and writes down what was asked. Values worked out on the way are kept with what they
 * rest on; those that rest on differing replies only for the choice at hand. Concludes nothing.
 */
import { type BandSpan, type Measured, NOT_APPLICABLE, type Outcome, type Ref, type Scope, Unknown } from "../expr/run.js";
import { keyText, type Problem } from "../terms/index.js";
import type { Given, Standing } from "./given.js";
import { type BandRecord, judgeBand } from "./limits.js";
import type { DerivedInfo, LimitInfo, RefInfo } from "./model.js";
import { type Aggregate, aggregate } from "./reading.js";
import type { DiscardNode, Site, SlotNode } from "./site.js";

/** Something worked out, and the nodes it rests on in the order they were asked. */
export interface Kept<T = unknown> {
  readonly value: T;
  readonly reads: readonly number[];
  readonly problems: readonly Problem[];
}
export type Records = (Kept | undefined)[];

/** A derived value with where it came from. */
export interface DerivedRecord {
  readonly outcome: Outcome<Measured>;
  /** Of `prefer`: the one used, and those named before it that were not known. */
  readonly used: string | undefined;
  readonly insteadOf: readonly string[];
}

export const NO_PROBLEMS: readonly Problem[] = [];
/** No choice made: the first of several standing values. */
export const FIRST: ReadonlyMap<number, number> = new Map();
const CLOSER = "!closer";

export class World implements Scope {
  /** Nodes read since the last `open`. */
  reads: number[] = [];
  problems: Problem[] = [];
  /** Whether something read since the last `open` has several standing replies. */
  torn = false;
  /** Slots and facts with several standing values met so far, and how many each has. */
  readonly met = new Map<number, number>();
  /** Which of the standing values counts, by node; the first where none is named. */
  choice: ReadonlyMap<number, number> = FIRST;
  /** A band finding takes the worse end of this reading. */
  worseEnd: RefInfo | undefined;
  /** First pass: readings before any is discarded. */
  raw = false;
  /** Third pass: faults the second pass concluded, by id. */
  founds: ReadonlyMap<string, readonly string[]> | undefined;

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

  /** Begins a question: nothing read yet, the first of differing replies. */
  begin(): void {
    this.reads = [];
    if (this.problems.length > 0) this.problems = [];
    this.torn = false;
    if (this.choice.size > 0) this.choose(FIRST);
  }

  /** Runs with a list of reads of its own; the caller decides what becomes of it. */
  apart<T>(work: () => T): Kept<T> & { readonly torn: boolean } {
    const outer = { reads: this.reads, problems: this.problems, torn: this.torn };
    this.reads = [];
    this.problems = [];
    this.torn = false;
    const value = work();
    const kept = { value, reads: this.reads, problems: this.problems, torn: this.torn };
    this.reads = outer.reads;
    this.problems = outer.problems;
    this.torn = outer.torn;
    return kept;
  }

  /** A kept value of a node, worked out when it is not there yet. */
  keep<T>(node: number, work: () => T): T {
    const records = this.raw ? this.rawRecords : this.records;
    const torn = this.torn_[this.raw ? 1 : 0];
    const busy = this.busy[this.raw ? 1 : 0];
    const known = records[node];
    this.reads.push(node);
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
      kept = { value: done.value, reads: [...new Set(done.reads)], problems: done.problems.length === 0 ? NO_PROBLEMS : done.problems };
      if (!done.torn) {
        records[node] = kept;
        return done.value;
      }
      torn.set(node, kept);
    }
    this.torn = true;
    for (const read of kept.reads) this.reads.push(read);
    return kept.value as T;
  }

  /** A value rests on differing replies also when it is taken from an earlier question. */
  private meetAgain(reads: readonly number[]): void {
    for (const id of reads) {
      const several = (this.given.replies[id] ?? this.given.facts[id])?.length ?? 0;
      if (several > 1) this.met.set(id, several);
    }
  }

  /** The kept value of a node under the choice at hand; undefined when it was not asked. */
  keptOf(node: number): Kept | undefined {
    const at = this.raw ? 1 : 0;
    return (this.raw ? this.rawRecords : this.records)[node] ?? this.torn_[at].get(node);
  }

  /** What stands in a slot under the choice at hand; a discarded reading is none. */
  standing(slot: SlotNode): Standing | undefined {
    if (!this.raw && slot.discards.length > 0 && this.isDiscarded(slot)) {
      this.reads.push(slot.id);
      return undefined;
    }
    return this.pick(slot.id, this.given.replies[slot.id]);
  }

  isDiscarded(slot: SlotNode): boolean {
    return slot.discards.some((node) => this.discards(node) === true);
  }

  private discards(node: DiscardNode): Outcome {
    const { when } = node.rule;
    if (when === undefined) return NOT_APPLICABLE;
    return this.keep(node.id, () => {
      this.raw = true;
      try {
        return when(this, node.place);
      } finally {
        this.raw = false;
      }
    });
  }

  private pick<T>(node: number, standing: readonly T[] | undefined): T | undefined {
    this.reads.push(node);
    if (standing === undefined) return undefined;
    if (standing.length === 1) return standing[0];
    this.torn = true;
    this.met.set(node, standing.length);
    return standing[this.choice.get(node) ?? 0];
  }

  read(ref: Ref, place: string): Outcome {
    const info = this.site.model.refOf(ref);
    if (info.is === "stranger") return strange(info, place);
    if (info.is === "derived") {
      const measured = this.derivedOf(info, place);
      return measured instanceof Unknown ? measured : measured.value;
    }
    const slot = this.site.slotFor(info, place);
    if (slot === undefined) return NOT_APPLICABLE;
    const standing = this.standing(slot);
    if (standing === undefined) return slot.unknown;
    if (standing.shots === undefined) return standing.outcome;
    const measured = this.measureSlot(slot, standing);
    return measured instanceof Unknown ? measured : measured.value;
  }

  measured(ref: Ref, place: string): Outcome<Measured> {
    return this.measuredOf(this.site.model.refOf(ref), place);
  }

  measuredOf(info: RefInfo, place: string): Outcome<Measured> {
    if (info.is === "stranger") return strange(info, place);
    if (info.is === "derived") return this.derivedOf(info, place);
    const slot = this.site.slotFor(info, place);
    if (slot === undefined) return NOT_APPLICABLE;
    const standing = this.standing(slot);
    if (standing === undefined) return slot.unknown;
    return this.measureSlot(slot, standing);
  }

  /** A slot's value as the first limit over it aggregates; the mean without one. Fewer shots than asked: not known. */
  private measureSlot(slot: SlotNode, standing: Standing): Outcome<Measured> {
    if (standing.nonAnswer !== undefined) return standing.nonAnswer === "not-fitted" ? NOT_APPLICABLE : slot.unknown;
    if (standing.shots === undefined) {
      // counts take part in formulas as exact numbers; a word instead of a number has none
      return typeof standing.outcome === "number" ? { value: standing.outcome, u: 0 } : slot.unknown;
    }
    if (standing.shots.values.length < slot.field.shots) return slot.unknown;
    const limit: LimitInfo | undefined = slot.ref.limits[0];
    const how: Aggregate = limit?.aggregate ?? "mean";
    return aggregate(standing.shots, how, limit?.direction) ?? slot.unknown;
  }

  private derivedOf(info: RefInfo & { is: "derived" }, place: string): Outcome<Measured> {
    const node = this.site.derivedAt(info, place);
    if (node === undefined) return NOT_APPLICABLE;
    return this.keep(node.id, () => this.derive(info.derived, node.place)).outcome;
  }

  private derive(derived: DerivedInfo, place: string): DerivedRecord {
    if (derived.formula !== undefined)
      return { outcome: derived.formula(this, place), used: undefined, insteadOf: [] };
    const insteadOf: string[] = [];
    const missing = new Set<string>();
    for (const name of derived.prefer) {
      const info = this.site.model.named(name);
      const outcome = info === undefined ? NOT_APPLICABLE : this.measuredOf(info, place);
      if (!(outcome instanceof Unknown)) return { outcome, used: name, insteadOf };
      insteadOf.push(name);
      for (const key of outcome.missing) missing.add(key);
    }
    return { outcome: new Unknown(missing), used: undefined, insteadOf };
  }

  band(ref: Ref, place: string): Outcome<BandSpan> {
    const info = this.site.model.refOf(ref);
    if (info.is === "stranger") return strange(info, place);
    const asWorse = info === this.worseEnd;
    const record = this.bandOf(info, place);
    if (record instanceof Unknown) return record;
    return asWorse ? record.worseEnd : record.span;
  }

  /** The reading of a reference judged against the limits in force at a place. */
  bandOf(info: RefInfo, place: string): Outcome<BandRecord> {
    const node = this.site.bandAt(info, place);
    if (node === undefined) return NOT_APPLICABLE;
    return this.keep(node.id, () => judgeBand(this, info, node.place));
  }

  /** The kept record of a band node, if it was asked and known. */
  bandRecordOf(node: number): BandRecord | undefined {
    const value = this.keptOf(node)?.value;
    // records of band nodes are only ever written by bandOf
    return value === undefined || value instanceof Unknown ? undefined : (value as BandRecord);
  }

  /** Whether a limit applies at a place. */
  applies(limit: LimitInfo, place: string): Outcome {
    const { applies } = limit;
    if (limit.limit.applies === undefined) return true;
    if (applies === undefined) return NOT_APPLICABLE;
    const node = this.site.appliesAt(limit, place);
    return this.keep(node.id, () => applies(this, place));
  }

  /** Reply keys that, measured again with more care, would make a reading clearer. */
  closerKeys(info: RefInfo, place: string): readonly string[] {
    if (info.is === "field") {
      const slot = this.site.slotFor(info, place);
      return slot === undefined ? [] : [slot.key + CLOSER];
    }
    const node = this.site.derivedAt(info, place);
    const kept = node && this.keptOf(node.id);
    if (kept === undefined) return [];
    return this.slotsUnder(kept.reads).flatMap((id) => {
      const slot = this.site.nodes[id];
      return slot?.kind === "slot" && slot.field.kind === "reading" ? [slot.key + CLOSER] : [];
    });
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

  unanswered(ref: Ref, place: string): boolean {
    const info = this.site.model.refOf(ref);
    if (info.is !== "field") return this.measuredOf(info, place) instanceof Unknown;
    const slot = this.site.slotFor(info, place);
    const standing = slot === undefined ? undefined : this.standing(slot);
    return standing === undefined || standing.nonAnswer !== undefined;
  }

  fact(name: string): Outcome {
    const node = this.site.factFor(name);
    return this.pick(node.id, this.given.facts[node.id])?.outcome ?? node.unknown;
  }

  related(relation: string, place: string): readonly string[] {
    return this.site.related(relation, place);
  }

  places(kind: string): readonly string[] {
    return this.site.tree.ofKind(kind);
  }

  /** A fault at this place or at one inside it. */
  found(fault: string, place: string): boolean {
    this.reads.push(this.site.foundAt(fault, place).id);
    return isFound(this.site, this.founds, fault, place);
  }

  /** Replies behind a value, to be taken again with more care. */
  again(ref: Ref, place: string): ReadonlySet<string> {
    return new Set(this.closerKeys(this.site.model.refOf(ref), place).map((key) => key.slice(0, -CLOSER.length)));
  }

  report(problem: Problem): void {
    this.problems.push(problem);
  }
}

/** Whether a fault was concluded at a place or inside it. */
export function isFound(site: Site, founds: World["founds"], fault: string, place: string): boolean {
  return founds?.get(fault)?.some((at) => at === place || site.within(place, at)) ?? false;
}

/** A point of a sheet that is not loaded: not known, and named. */
function strange(info: RefInfo & { is: "stranger" }, place: string): Unknown {
  return new Unknown(new Set([keyText({ point: info.point, place, state: "", field: info.field })]));
}
