/**
 * Writes the demo's entries through the real record, at times of its own: drafts, store, fold, as any entry goes.
 * Only for streams of the demo.
 */
import {
  type Act,
  type CarState,
  type Draft,
  foldCar,
  foldStep,
  foldVisit,
  type KeptBytes,
  type RecordState,
  type Stamp,
  type Store,
  type VisitState,
} from "../../core/record/index.js";

export interface Scribe {
  car(stream: string): CarState;
  visit(stream: string): VisitState;
  /** Keeps what `make` drafts, stamped `minutes` after the moment the scribe stands at. */
  write(by: string, make: (act: Act) => readonly Draft[], blobs?: readonly KeptBytes[]): Promise<void>;
  /** Moves the moment on (ms since 1970). */
  at(wall: number): void;
}

/** Between two entries of the demo. */
const STEP_MS = 40_000;

/** Throws when the store refuses: the demo is all or nothing, and what was written is removed by the caller. */
export function scribeOn(store: Store, nonce: () => string): Scribe {
  const states = new Map<string, RecordState>();
  let wall = 0;
  return {
    car: (stream) => (states.get(stream) ?? foldCar([])) as CarState,
    visit: (stream) => (states.get(stream) ?? foldVisit([])) as VisitState,
    at: (moment) => {
      wall = moment;
    },
    async write(by, make, blobs = []) {
      wall += STEP_MS;
      const at: Stamp = { wall, count: 0 };
      const kept = await store.append(make({ id: nonce(), by, at, nonce }), blobs);
      if (!kept.ok) throw new Error(`The demo was not kept: ${kept.problems.map(({ code }) => code).join(", ")}`);
      for (const entry of kept.value) {
        const before = states.get(entry.stream) ?? (entry.stream.startsWith("car:") ? foldCar([]) : foldVisit([]));
        states.set(
          entry.stream,
          before.of === "car" ? foldStep(before, [entry]) : before.of === "visit" ? foldStep(before, [entry]) : before,
        );
      }
    },
  };
}
