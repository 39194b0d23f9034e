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
import { Ledger } from "./ledger.js";
import { type BandRecord, judgeBand } from "./limits.js";
import type { DerivedInfo, LimitInfo, RefInfo } from "./model.js";
import type { DiscardNode, SlotNode } from "./nodes.js";
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
    if (derived.formula !== undefined) return { outcome: derived.formula(this, place), used: undefined, insteadOf: [] };
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
    return this.site.tree.ofKind(kind);
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
