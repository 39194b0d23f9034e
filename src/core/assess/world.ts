/** Answers what conditions ask of one visit. Concludes nothing. */
import {
  type BandSpan,
  type Measured,
  NOT_APPLICABLE,
  type Outcome,
  type Ref,
  type Scope,
  Unknown,
} from "../expr/run.js";
import { keyText, type Problem } from "../terms/index.js";
import { kilometres } from "./earlier.js";
import { Ledger } from "./ledger.js";
import { type BandRecord, judgeBand } from "./limits.js";
import type { DerivedInfo, LimitInfo, RefInfo } from "./model.js";
import type { DiscardNode, LastNode, SlotNode } from "./nodes.js";
import { type Aggregate, aggregate } from "./reading.js";
import type { Site } from "./site.js";
import type { Standing } from "./understand.js";

/** A derived value with where it came from. */
export interface DerivedRecord {
  readonly outcome: Outcome<Measured>;
  /** Of `prefer`: the one used, and those named before it that were not known. */
  readonly used: string | undefined;
  readonly insteadOf: readonly string[];
}

const CLOSER = "!closer";

export class World extends Ledger implements Scope {
  /** Third pass: faults the second pass concluded, by id. */
  founds: ReadonlyMap<string, readonly string[]> | undefined;
  /** Kinds whose places were asked for all together. */
  readonly kindsAsked = new Set<string>();
  private held: string | undefined;
  /** The derived value being worked out: named where that fails. */
  private working = "";

  /** What stands in a slot under the choice at hand; a discarded reading is none. */
  standing(slot: SlotNode): Standing | undefined {
    if (!this.raw && slot.discards.length > 0 && this.isDiscarded(slot)) {
      this.note(slot.id);
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

  read(ref: Ref, place: string): Outcome {
    const info = this.site.model.refOf(ref);
    if (info.is === "stranger") return strange(info, place);
    if (info.is === "derived") {
      const measured = this.derivedOf(info, place);
      return measured instanceof Unknown ? measured : measured.value;
    }
    const slot = this.site.slotFor(info, place);
    if (slot === undefined) return NOT_APPLICABLE;
    const standing = ref.last === true ? this.lastStanding(slot) : (this.standing(slot) ?? slot.unknown);
    if (standing instanceof Unknown) return standing;
    if (standing.shots === undefined) return standing.outcome;
    const measured = this.measureSlot(slot, standing, ref.last === true ? NOT_APPLICABLE : slot.unknown);
    return measured instanceof Unknown ? measured : measured.value;
  }

  measured(ref: Ref, place: string): Outcome<Measured> {
    const info = this.site.model.refOf(ref);
    if (ref.last !== true) return this.measuredOf(info, place);
    const slot = this.site.slotFor(info, place);
    if (slot === undefined) return NOT_APPLICABLE;
    const standing = this.lastStanding(slot);
    return standing instanceof Unknown ? standing : this.measureSlot(slot, standing, NOT_APPLICABLE);
  }

  /** How far the car has come since the last reply here; a clock turned back or changed tells nothing. */
  sinceLast(ref: Ref, place: string): Outcome<number> {
    const slot = this.site.slotFor(this.site.model.refOf(ref), place);
    if (slot === undefined) return NOT_APPLICABLE;
    const node = this.lastNode(slot);
    if (node instanceof Unknown) return node;
    this.note(node.id);
    this.note(this.site.odometer.id);
    const then = kilometres(this.given.earlier(node)?.odometer);
    const now = this.given.odometer;
    return then === undefined || now === undefined || now < then ? NOT_APPLICABLE : now - then;
  }

  private lastStanding(slot: SlotNode): Standing | Unknown {
    const node = this.lastNode(slot);
    if (node instanceof Unknown) return node;
    return this.pick(node.id, this.given.earlier(node)?.standing) ?? NOT_APPLICABLE;
  }

  /** Like is compared with like: of a point asked in several car states, the state this visit's reply was given in. */
  private lastNode(slot: SlotNode): LastNode | Unknown {
    const [state, ...others] = slot.spot.point.states;
    if (state !== undefined && others.length === 0) return this.site.lastAt(slot, state);
    const now = this.standing(slot);
    if (now?.nonAnswer === "not-fitted") return NOT_APPLICABLE;
    return now === undefined || now.nonAnswer !== undefined ? slot.unknown : this.site.lastAt(slot, now.key.state);
  }

  measuredOf(info: RefInfo, place: string): Outcome<Measured> {
    if (info.is === "stranger") return strange(info, place);
    if (info.is === "derived") return this.derivedOf(info, place);
    const slot = this.site.slotFor(info, place);
    if (slot === undefined) return NOT_APPLICABLE;
    const standing = this.standing(slot);
    if (standing === undefined) return slot.unknown;
    return this.measureSlot(slot, standing, slot.unknown);
  }

  /** A slot's value as the first limit over it aggregates; the mean without one. `otherwise` where there is no number. */
  private measureSlot(slot: SlotNode, standing: Standing, otherwise: Unknown): Outcome<Measured> {
    if (standing.nonAnswer !== undefined) return standing.nonAnswer === "not-fitted" ? NOT_APPLICABLE : otherwise;
    if (standing.shots === undefined) {
      // counts take part in formulas as exact numbers; a word instead of a number has none
      return typeof standing.outcome === "number" ? { value: standing.outcome, u: 0 } : otherwise;
    }
    if (standing.shots.values.length < slot.field.shots) return otherwise;
    const limit: LimitInfo | undefined = slot.ref.limits[0];
    const how: Aggregate = limit?.aggregate ?? "mean";
    return aggregate(standing.shots, how, limit?.direction) ?? otherwise;
  }

  private derivedOf(info: RefInfo & { is: "derived" }, place: string): Outcome<Measured> {
    const node = this.site.derivedAt(info, place);
    if (node === undefined) return NOT_APPLICABLE;
    return this.keep(node.id, () => this.derive(info.derived, node.place)).outcome;
  }

  private derive(derived: DerivedInfo, place: string): DerivedRecord {
    if (derived.formula !== undefined) {
      const before = this.working;
      this.working = derived.derived.id;
      const outcome = derived.formula(this, place);
      this.working = before;
      return { outcome, used: undefined, insteadOf: [] };
    }
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
    this.kindsAsked.add(kind);
    return this.held !== undefined && this.site.tree.kindOf(this.held) === kind
      ? [this.held]
      : this.site.tree.ofKind(kind);
  }

  /** Asks with `places("…")` giving this one place of its kind; what is kept meanwhile rests on all of them. */
  holding<T>(place: string, ask: () => T): T {
    this.held = place;
    try {
      return ask();
    } finally {
      this.held = undefined;
    }
  }

  override keep<T>(node: number, work: () => T): T {
    const { held } = this;
    this.held = undefined;
    const value = super.keep(node, work);
    this.held = held;
    return value;
  }

  /** A fault at this place or at one inside it. */
  found(fault: string, place: string): boolean {
    this.note(this.site.foundAt(fault, place).id);
    return isFound(this.site, this.founds, fault, place);
  }

  /** Replies behind a value, to be taken again with more care. */
  again(ref: Ref, place: string): ReadonlySet<string> {
    return new Set(this.closerKeys(this.site.model.refOf(ref), place).map((key) => key.slice(0, -CLOSER.length)));
  }

  report(problem: Problem): void {
    const { working } = this;
    this.problems.push(working === "" ? problem : { ...problem, params: { ...problem.params, value: working } });
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
