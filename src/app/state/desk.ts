/**
 * One visit laid out to work on: its record, what it froze, the judgement that follows every kept reply, the jobs in
 * order. Judging runs on kept replies only. Knows no screen.
 */
import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import type { Assessment, JobDue } from "../../core/assess/contract.js";
import type { Engine, Session } from "../../core/assess/index.js";
import type { Reason } from "../../core/plan/index.js";
import {
  type CarState,
  lookedOn,
  placesOf,
  type Store,
  toAssessInput,
  type VisitState,
} from "../../core/record/index.js";
import { type BuiltSheet, buildPlaces, type PlaceTree } from "../../core/sheet/run.js";
import type { Problem } from "../../core/terms/index.js";
import type { Journal, Opened } from "./journal.js";
import { type Knowledge, knowledgeOf } from "./knowledge.js";
import {
  type Compiler,
  commonTextsOf,
  type FrozenSet,
  plannedSet,
  readFrozenSet,
  type Shelf,
  textsOf,
} from "./shelf.js";

export type Judging = typeof import("./judging.js");

/** A visit's sheets, shared files and limits as frozen, ready to be looked up and judged by. */
export interface Laid {
  readonly frozen: FrozenSet;
  readonly known: Knowledge;
  readonly sheets: readonly BuiltSheet[];
  readonly engine: Engine;
}

export interface Desk {
  readonly stream: string;
  /** With what is not kept laid over it: what the screen shows as replied. */
  readonly visit: ReadonlySignal<Opened<VisitState>>;
  readonly car: ReadonlySignal<Opened<CarState> | undefined>;
  readonly known: ReadonlySignal<Knowledge | undefined>;
  readonly tree: ReadonlySignal<PlaceTree | undefined>;
  /** Follows kept replies; undefined until the sheets are laid out. */
  readonly assessment: ReadonlySignal<Assessment | undefined>;
  readonly jobs: ReadonlySignal<readonly JobDue[]>;
  readonly above: (due: JobDue, next: JobDue) => Reason;
  readonly engineVersion: () => string;
  readonly earlier: ReadonlySignal<readonly VisitState[]>;
  readonly trouble: ReadonlySignal<Problem | undefined>;
  readonly laid: ReadonlySignal<Laid | undefined>;
}

export interface DeskNeeds {
  readonly journal: Journal;
  readonly store: Pick<Store, "blob">;
  readonly shelf: Shelf;
  readonly compiler: Compiler;
  readonly judging: () => Promise<Judging>;
}

/** Lays a visit out. Never thrown away while the app runs: two cars may be open at once. */
export function layOut({ journal, store, shelf, compiler, judging }: DeskNeeds, stream: string): Desk {
  const visit = journal.visit(stream);
  const kept = journal.keptVisit(stream);
  const keptState = computed(() => (kept.value.is === "open" ? kept.value.state : undefined));
  const carStream = computed(() => keptState.value?.opened?.value.car);
  const car = computed(() => (carStream.value === undefined ? undefined : journal.car(carStream.value).value));
  const carState = computed(() => (car.value?.is === "open" ? car.value.state : undefined));
  const trouble = signal<Problem | undefined>(undefined);
  const laid = signal<Laid | undefined>(undefined);
  const core = signal<Judging | undefined>(undefined);
  const assessment = signal<Assessment | undefined>(undefined);

  /** What was frozen, as one text: only a change of it lays the sheets out anew. */
  const frozenText = computed(() => {
    const state = keptState.value;
    if (!state?.frozen || state.sheets.length === 0) return undefined;
    return JSON.stringify({ ...state.frozen, sheets: state.sheets.map(({ blob }) => blob) });
  });
  effect(() => {
    const text = frozenText.value;
    if (text === undefined) return;
    void lay(JSON.parse(text) as Parameters<typeof readFrozenSet>[1]);
  });
  async function lay(hashes: Parameters<typeof readFrozenSet>[1]): Promise<void> {
    const [loaded, frozen] = await Promise.all([judging(), readFrozenSet(store, hashes)]);
    const planned = frozen.ok ? await plannedSet(shelf, compiler, frozen.value) : frozen;
    if (!frozen.ok || !planned.ok) {
      trouble.value = (frozen.ok ? planned : frozen).ok ? undefined : firstProblem(frozen.ok ? planned : frozen);
      return;
    }
    const sheets = frozen.value.sheets.map((file) => ({ sheet: file.sheet, texts: textsOf(file) }));
    core.value = loaded;
    laid.value = {
      frozen: frozen.value,
      known: knowledgeOf(frozen.value.common.common, commonTextsOf(frozen.value.common), sheets),
      sheets: planned.value.sheets,
      engine: loaded.prepare(planned.value.common, planned.value.sheets),
    };
    trouble.value = undefined;
  }

  const earlier = earlierVisits(journal, stream, keptState, carStream);
  const tree = computed(() => {
    const known = laid.value?.known;
    return known && buildPlaces(known.common.places, carState.value ? placesOf(carState.value) : []).tree;
  });

  let session: Session | undefined;
  effect(() => {
    const { start, reassess, applyRegrades } = core.value ?? {};
    const [set, state, owner] = [laid.value, keptState.value, carState.value];
    if (!start || !reassess || !applyRegrades || !set || !state || !owner) return;
    const input = toAssessInput(owner, state, earlier.value, set.frozen.limits.limits);
    if (!input.ok) return;
    session =
      session && session.engine === set.engine ? reassess(session, input.value) : start(set.engine, input.value);
    const regrades = [...state.regrades.values()].flatMap((standing) =>
      standing.map(({ id, value }) => ({ ...value, id })),
    );
    assessment.value = regrades.length > 0 ? applyRegrades(session.assessment, regrades) : session.assessment;
  });

  const jobs = computed(() => {
    const [judged, set, loaded, state] = [assessment.value, laid.value, core.value, keptState.value];
    if (!judged || !set || !loaded || !state) return [];
    const around = tree.value?.around;
    return loaded.order(judged, set.sheets, { at: lookedOn(state), exposure: 0, ...(around ? { around } : {}) });
  });
  return {
    stream,
    visit,
    car,
    known: computed(() => laid.value?.known),
    tree,
    assessment,
    jobs,
    above: (due, next) => loadedCore(core.peek()).whyAbove(due, next),
    engineVersion: () => loadedCore(core.peek()).ENGINE_VERSION,
    earlier,
    trouble,
    laid,
  };
}

function loadedCore(core: Judging | undefined): Judging {
  if (!core) throw new Error("Judging was asked for before the visit was laid out");
  return core;
}

const firstProblem = (result: { readonly ok: boolean; readonly problems?: readonly Problem[] }): Problem | undefined =>
  result.problems?.[0];

/** Earlier visits of the same car, oldest first; those begun later, and those of other cars, are left out. */
function earlierVisits(
  journal: Journal,
  stream: string,
  state: ReadonlySignal<VisitState | undefined>,
  car: ReadonlySignal<string | undefined>,
): ReadonlySignal<readonly VisitState[]> {
  const streams = computed(() => {
    const own = state.value;
    if (!own) return [];
    const on = lookedOn(own);
    return (journal.summaries.value ?? [])
      .flatMap((one) =>
        one.of === "visit" && one.car === car.value && one.stream !== stream && one.on < on ? [one] : [],
      )
      .sort((a, b) => (a.on < b.on ? -1 : 1))
      .map((one) => one.stream);
  });
  return computed(() =>
    streams.value.flatMap((one) => {
      const opened = journal.keptVisit(one).value;
      return opened.is === "open" ? [opened.state] : [];
    }),
  );
}
