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
  type PlanUse,
  placesOf,
  type Store,
  type VisitState,
} from "../../core/record/index.js";
import {
  type BuiltCommon,
  type BuiltSheet,
  buildPlaces,
  type Complaints,
  type PlaceTree,
} from "../../core/sheet/run.js";
import { type Problem, problem } from "../../core/terms/index.js";
import type { Journal, Opened } from "./journal.js";
import { type Knowledge, knowledgeOf, withPlaceNames } from "./knowledge.js";
import type { TextShelf } from "./settings.js";
import {
  type Compiler,
  commonTextsOf,
  complaintsOf,
  type FrozenSet,
  plannedSet,
  readFrozenSet,
  type Shelf,
  textsOf,
} from "./shelf.js";

export type Judging = typeof import("./judging.js");

/** A visit's sheets, shared files and limits as frozen, ready to be looked up. */
export interface Laid {
  readonly frozen: FrozenSet;
  readonly known: Knowledge;
}

/** The same linked, ready to be judged by. */
export interface Linked {
  readonly laid: Laid;
  /** There once the visit has a complaint: they put points first. */
  readonly complaints: Complaints | undefined;
  readonly core: Judging;
  readonly common: BuiltCommon;
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
  /**
   * Fetches what judges. A visit with a reply or a complaint asks for it by itself; one with nothing to judge yet
   * waits until a screen needs a judgement.
   */
  readonly judge: () => void;
  /** Follows kept replies; undefined until it is asked for and laid out. */
  readonly assessment: ReadonlySignal<Assessment | undefined>;
  readonly jobs: ReadonlySignal<readonly JobDue[]>;
  readonly above: (due: JobDue, next: JobDue) => Reason;
  readonly engineVersion: () => string;
  /** What the last judgement rests on, for telling how its values came about. */
  readonly ground: () => readonly [Linked | undefined, Session | undefined];
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
  readonly remembered: TextShelf;
}

/** What order counts a use as; one nobody has said is normal. */
const EXPOSURE: Readonly<Record<PlanUse, -1 | 0 | 1>> = { "laid-up": -1, normal: 0, hard: 1 };

const mistake = (error: unknown): Problem => problem("app.mistake", {}, { says: String(error) });

/** Lays a visit out. Never thrown away while the app runs: two cars may be open at once. */
export function layOut(needs: DeskNeeds, stream: string): Desk {
  const { journal, store, shelf, compiler, judging } = needs;
  const visit = journal.visit(stream);
  const kept = journal.keptVisit(stream);
  const keptState = computed(() => (kept.value.is === "open" ? kept.value.state : undefined));
  const carStream = computed(() => keptState.value?.opened?.value.car);
  const car = computed(() => (carStream.value === undefined ? undefined : journal.car(carStream.value).value));
  const carState = computed(() => (car.value?.is === "open" ? car.value.state : undefined));
  const trouble = signal<Problem | undefined>(undefined);
  const laid = signal<Laid | undefined>(undefined);
  const linked = signal<Linked | undefined>(undefined);
  const wanted = signal(false);
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
    const frozen = await readFrozenSet(store, hashes);
    trouble.value = frozen.ok ? undefined : frozen.problems[0];
    if (!frozen.ok) return;
    const { common, sheets } = frozen.value;
    const open = sheets.map((file) => ({ sheet: file.sheet, texts: textsOf(file) }));
    laid.value = { frozen: frozen.value, known: knowledgeOf(common.common, commonTextsOf(common), open) };
  }

  effect(() => {
    const state = keptState.value;
    if (state && state.replies.size + state.complaints.length + state.found.size > 0) wanted.value = true;
  });
  const complained = computed(() => (keptState.value?.complaints.length ?? 0) > 0);
  effect(() => {
    const [set, isSaid, last] = [laid.value, complained.value, linked.peek()];
    if (!wanted.value || !set || (last?.laid === set && (last.complaints !== undefined || !isSaid))) return;
    link(set, isSaid).catch((error: unknown) => {
      trouble.value = mistake(error);
    });
  });
  async function link(set: Laid, isSaid: boolean): Promise<void> {
    let unheard: Problem | undefined;
    const [core, planned, complaints] = await Promise.all([
      judging(),
      plannedSet(shelf, compiler, set.frozen),
      // They put points first and judge nothing: without them judging goes on, and it is told.
      isSaid
        ? complaintsOf(shelf).catch((error: unknown) => {
            unheard = mistake(error);
            return undefined;
          })
        : undefined,
    ]);
    const engine = planned.ok ? await core.ready(planned.value, complaints) : undefined;
    // Another set was laid out meanwhile, or the visit's first complaint was kept: that linking says more.
    if (laid.peek() !== set || complained.peek() !== isSaid) return;
    trouble.value = planned.ok ? unheard : planned.problems[0];
    if (planned.ok && engine) linked.value = { laid: set, core, complaints, ...planned.value, engine };
  }

  const earlier = earlierVisits(journal, stream, keptState, carStream);
  const tree = computed(() => {
    const common = laid.value?.known.common;
    return common && buildPlaces(common.places, carState.value ? placesOf(carState.value) : []).tree;
  });

  const found = computed(() => keptState.value?.found);
  const known = computed(() => {
    const [set, ready] = [laid.value, linked.value];
    if (!set) return undefined;
    const heard = ready?.laid === set && ready.complaints ? { ...set.known, complaints: ready.complaints } : set.known;
    const names = carState.value?.placeNames;
    const named = names ? withPlaceNames(heard, names) : heard;
    const own = found.value;
    return own && ready ? ready.core.withOwnWords(named, { found: own }) : named;
  });

  let session: Session | undefined;
  effect(() => {
    const [set, state, owner] = [linked.value, keptState.value, carState.value];
    if (!set || !state || !owner) return;
    const { engine, core } = set;
    const input = core.toAssessInput(owner, state, earlier.value, set.laid.frozen.limits.limits);
    if (!input.ok) return;
    session = session?.engine === engine ? core.reassess(session, input.value) : core.start(engine, input.value);
    assessment.value = core.inOrder(core.withHand(session.assessment, state), state, set, needs);
  });

  const jobs = computed(() => {
    const [judged, set, state] = [assessment.value, linked.value, keptState.value];
    if (!judged || !set || !state) return [];
    const around = tree.value?.around;
    // Read only here, once jobs are asked for: a plan's fold is not fetched before the first reply.
    const plan = journal.keptPlan(stream).value;
    const use = (plan.is === "open" ? plan.state.use.at(-1)?.value : undefined) ?? "normal";
    const exposure = EXPOSURE[use];
    return set.core.order(judged, set.sheets, { at: lookedOn(state), exposure, ...(around ? { around } : {}) });
  });
  return {
    stream,
    visit,
    car,
    known,
    tree,
    judge: () => {
      wanted.value = true;
    },
    assessment,
    jobs,
    above: (due, next) => coreOf(linked.peek()).whyAbove(due, next),
    engineVersion: () => coreOf(linked.peek()).ENGINE_VERSION,
    ground: () => [linked.peek(), session],
    earlier,
    trouble,
    laid,
  };
}

function coreOf(linked: Linked | undefined): Judging {
  if (!linked) throw new Error("Judging was asked for before the visit was laid out");
  return linked.core;
}

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
