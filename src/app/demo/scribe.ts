/**
 * Writes the demo's entries through the real record, at times of its own: drafts, folded as any entry is, and kept in
 * one transaction at the end, so that the demo is there whole or not at all. Only for streams of the demo.
 */
import {
  type Act,
  type CarState,
  type Draft,
  type Entry,
  foldCar,
  foldPlan,
  foldStep,
  foldVisit,
  idText,
  type KeptBytes,
  type PlanState,
  type Store,
  streamKind,
  type VisitState,
} from "../../core/record/index.js";

export interface Scribe {
  car(stream: string): CarState;
  visit(stream: string): VisitState;
  plan(stream: string): PlanState;
  /** Moves the moment on (ms since 1970); each act after it is a little later than the one before. */
  at(wall: number): void;
  /** Notes down what `make` drafts, one act. */
  say(by: string, make: (act: Act) => readonly Draft[], blobs?: readonly KeptBytes[]): void;
  /** Notes down one act after another, all drafted from what stood before the first. */
  sayEach(by: string, makes: readonly ((act: Act) => Draft)[]): void;
  /** Keeps all that was noted down. Throws when the store refuses: nothing was kept then. */
  keep(): Promise<void>;
}

/** Between two acts of the demo, and between two replies of a row. */
const STEP_MS = 40_000;
const QUICK_MS = 12_000;

export async function scribeOn(store: Store, nonce: () => string): Promise<Scribe> {
  const writer = await store.writer();
  if (!writer.ok) throw new Error(refusal(writer.problems));
  const cars = new Map<string, CarState>();
  const visits = new Map<string, VisitState>();
  const plans = new Map<string, PlanState>();
  const drafts: Draft[] = [];
  const bytes = new Map<string, KeptBytes>();
  const expected: string[] = [];
  const last = new Map<string, number>();
  let wall = 0;

  /** The entry a draft becomes in a stream nobody has written to yet. */
  function entryOf(draft: Draft): Entry {
    const seq = (last.get(draft.stream) ?? 0) + 1;
    last.set(draft.stream, seq);
    const entry = { ...draft, writer: writer.ok ? writer.value : "", seq };
    expected.push(idText(entry));
    return entry;
  }
  const car = (stream: string): CarState => cars.get(stream) ?? foldCar([]);
  const visit = (stream: string): VisitState => visits.get(stream) ?? foldVisit([]);
  const plan = (stream: string): PlanState => plans.get(stream) ?? { ...foldPlan([]), stream };

  const actBy = (by: string): Act => ({ id: nonce(), by, at: { wall, count: 0 }, nonce });

  /** Takes drafts down and folds them, each stream in one go. */
  function note(made: readonly Draft[]): void {
    drafts.push(...made);
    const byStream = new Map<string, Entry[]>();
    for (const draft of made) {
      const entries = byStream.get(draft.stream) ?? [];
      entries.push(entryOf(draft));
      byStream.set(draft.stream, entries);
    }
    for (const [stream, entries] of byStream) {
      const kind = streamKind(stream);
      if (kind === "car") cars.set(stream, foldStep(car(stream), entries));
      else if (kind === "plan") plans.set(stream, foldStep(plan(stream), entries));
      else visits.set(stream, foldStep(visit(stream), entries));
    }
  }

  return {
    car,
    visit,
    plan,
    at(moment) {
      wall = moment;
    },
    say(by, make, blobs = []) {
      wall += STEP_MS;
      note(make(actBy(by)));
      for (const blob of blobs) bytes.set(blob.hash, blob);
    },
    sayEach(by, makes) {
      note(
        makes.map((make) => {
          wall += QUICK_MS;
          return make(actBy(by));
        }),
      );
    },
    async keep() {
      const kept = await store.append(drafts, [...bytes.values()]);
      if (!kept.ok) throw new Error(refusal(kept.problems));
      const isAsExpected = kept.value.every((entry, at) => idText(entry) === expected[at]);
      if (!isAsExpected) throw new Error("The demo was kept under other names than it refers to");
    },
  };
}

const refusal = (problems: readonly { readonly code: string }[]): string =>
  `The demo was not kept: ${problems.map(({ code }) => code).join(", ")}`;
