/**
 * From a judged visit to what a hand-over is made from: every id put into words, nothing judged anew. What only the
 * record knows (answers, decisions, money, pictures) is laid over the result by who knows it.
 */
import type {
  AssessInput,
  Assessment,
  CautionDue,
  Fault,
  GateState,
  JobDue,
  Opened,
  Worth,
} from "../../assess/index.js";
import { type Audience, forbidsOf, type GradeLevel, gradeOf, keyText, type ReplyValue } from "../../terms/index.js";
import { awaitedIn, causesOfCaution, causesOfGate } from "./causes.js";
import { worstRules } from "./fault-words.js";
import { stepsOf } from "./gather-because.js";
import { readingsOf } from "./gather-readings.js";
import type {
  CautionTold,
  FaultRef,
  FaultTold,
  GateTold,
  HandoverInput,
  JobTold,
  NotSeen,
  SheetTold,
} from "./input.js";
import type { HandoverNames } from "./names.js";

export interface Gathered {
  readonly for: Audience;
  readonly madeAt: string;
  /** Stable name of the visit. */
  readonly visit: string;
  readonly car: string;
  readonly input: AssessInput;
  readonly assessment: Assessment;
  readonly jobs: readonly JobDue[];
  readonly editions: ReadonlyMap<string, { readonly edition: string; readonly label?: string }>;
  /** What a look at a point could have decided, by point. */
  readonly worth?: ReadonlyMap<string, Pick<Worth, "decides" | "stops">> | undefined;
  readonly names: HandoverNames;
}

/** Everything a judged visit tells by itself. Complaints come out open: an answer is a person's word. */
export function gathered(of: Gathered): HandoverInput {
  const { assessment, input, names } = of;
  const { odometer } = input;
  const facts = [
    ...(input.car.firstUsed === undefined ? [] : [names.fact("first-used", input.car.firstUsed)]),
    ...Object.entries(input.car.facts).map(([name, value]) => names.fact(name, value)),
  ];
  return {
    for: of.for,
    madeAt: of.madeAt,
    engine: assessment.engine,
    visit: {
      id: of.visit,
      at: input.at,
      who: input.who,
      ...(odometer === undefined ? {} : { odometer }),
      ...(input.nextVisit === undefined ? {} : { next: input.nextVisit.slice(0, DAY) }),
    },
    car: { name: of.car, facts },
    complaints: input.complaints.map((words, index) => ({ id: `complaint-${index + 1}`, words })),
    faults: assessment.faults.map((fault) => faultTold(of, fault)),
    notSeen: notSeenOf(of),
    looked: { sound: assessment.points.filter(({ is }) => is === "sound").length },
    sheets: sheetsOf(of),
    gates: assessment.gates.map((gate) => gateTold(of, gate)),
    cautions: assessment.cautions.map((due) => cautionTold(of, due)),
    readings: readingsOf(of),
    jobs: of.jobs.map((due) => jobTold(of, due)),
  };
}

/** Length of a calendar day as text. */
const DAY = 10;

const jobId = ({ job, place }: Pick<JobDue, "job" | "place">): string => `${job}@${place}`;
const refOf = ({ fault, place }: FaultRef): FaultRef => ({ fault, place });
const isOf = (of: FaultRef) => (one: FaultRef) => one.fault === of.fault && one.place === of.place;

function pointAt({ names }: Gathered, { point, place }: Opened): string {
  const where = names.place(place);
  return where === "" ? names.point(point) : `${names.point(point)}, ${where}`;
}

function faultTold(of: Gathered, fault: Fault): FaultTold {
  const { names, assessment, jobs } = of;
  const own = assessment.findings.filter((one) => one.fault === fault.fault && one.place === fault.place);
  const { says, cause } = names.fault(fault.fault, fault.rules, worstRules(own));
  const items = fault.rules.flatMap((rule) => names.answersTo(rule) ?? []);
  return {
    fault: fault.fault,
    place: fault.place,
    title: says,
    where: names.place(fault.place),
    grade: fault.grade,
    sure: fault.sure,
    close: fault.close,
    provisional: fault.provisional,
    atLeast: own.some(({ atLeast }) => atLeast),
    differ: own.some(({ differ }) => differ.length > 0),
    ...(fault.byHand ? { byHand: { was: fault.byHand.was, reason: fault.byHand.reason } } : {}),
    consequence: fault.consequence,
    mustStand: fault.mustStand,
    rules: fault.rules,
    answersTo: [...new Set(items)],
    ...(cause === undefined ? {} : { cause }),
    because: stepsOf(of, own),
    settle: [...new Set(fault.settle.map((one) => pointAt(of, one)))],
    jobs: jobs.filter((due) => due.faults.some(isOf(fault))).map(jobId),
  };
}

function notSeenOf(of: Gathered): readonly NotSeen[] {
  const { assessment, input, names, worth } = of;
  const said = new Map(input.replies.map(({ key, value }) => [keyText(key), value]));
  const isAwaited = awaitedIn(assessment);
  return assessment.points.flatMap((one): readonly NotSeen[] => {
    if (one.is !== "not-looked-at" && one.is !== "cannot-get-at") return [];
    const { point, place, state } = one;
    const value: ReplyValue | undefined = said.get(keyText({ point, place, state, field: "*" }));
    const answer = value?.type === "non-answer" ? value : undefined;
    const reason = answer?.reason ?? one.reason;
    const decides = worth?.get(point)?.decides;
    const kind = names.kind(place);
    return [
      {
        point,
        place,
        title: names.point(point),
        where: names.place(place),
        state: names.state(state),
        is: one.is === "not-looked-at" ? "not-looked" : "cannot-reach",
        ...(answer === undefined ? {} : { nonAnswer: answer.nonAnswer }),
        ...(reason === undefined ? {} : { reason }),
        ...(answer?.words === undefined ? {} : { words: answer.words }),
        ...(decides === undefined ? {} : { couldDecide: gradeOf(decides as GradeLevel) ?? "nothing" }),
        sheet: names.sheet(point.split(".")[0] ?? ""),
        ...(kind === undefined ? {} : { kind }),
        ...(isAwaited(one) || worth?.get(point)?.stops ? { awaited: true } : {}),
      },
    ];
  });
}

const sheetsOf = ({ assessment, editions, names }: Gathered): readonly SheetTold[] =>
  assessment.coverage.map(({ sheet, answered, of, nonAnswers, notChecked, notForThisLook, enough }) => {
    const { edition = "", label } = editions.get(sheet) ?? {};
    const notFitted = nonAnswers["not-fitted"] ?? 0;
    const named = { id: sheet, name: names.sheet(sheet), edition, ...(label === undefined ? {} : { label }) };
    return { ...named, answered, of, notFitted, notChecked, notForThisLook, enough };
  });

/** Each point once, with its places. One of a sheet that is not open has no name here: that sheet is named instead. */
function firstOf({ names }: Gathered, all: readonly Opened[]): readonly string[] {
  const places = new Map<string, string[]>();
  for (const { point, place } of all) {
    if (names.point(point) === point) continue;
    const where = names.place(place);
    places.set(point, [...(places.get(point) ?? []), ...(where === "" ? [] : [where])]);
  }
  return [...places].map(([point, where]) =>
    where.length === 0 ? names.point(point) : `${names.point(point)} (${[...new Set(where)].join(", ")})`,
  );
}

function gateTold(of: Gathered, gate: GateState): GateTold {
  const { assessment, names } = of;
  const text = names.gate(gate.gate);
  return {
    gate: gate.gate,
    title: text.name,
    guards: gate.guards,
    drives: gate.drives,
    state: gate.state,
    says: gate.state === "tripped" ? text.tripped : gate.state === "not cleared" ? text.first : "",
    first: firstOf(of, gate.first),
    ...causesOfGate(gate, assessment),
    otherwise: gate.otherwise,
    missing: gate.missingSheets.map((sheet) => names.sheet(sheet)),
  };
}

function cautionTold({ assessment, names }: Gathered, due: CautionDue): CautionTold {
  const { faults, onlyThose } = causesOfCaution(due, assessment);
  const text = names.caution(due.caution);
  const forbids = forbidsOf(due.caution);
  return {
    caution: due.caution,
    signal: due.signal,
    not: text.not,
    why: text.why,
    can: text.can,
    todo: text.do,
    places: due.places.map((place) => names.place(place)).filter((one) => one !== ""),
    ...(forbids === undefined ? {} : { forbids }),
    faults: onlyThose ? faults : [],
  };
}

function jobTold({ names }: Gathered, due: JobDue): JobTold {
  const { name, does } = names.job(due.job);
  return {
    id: jobId(due),
    title: name,
    where: names.place(due.place),
    does,
    grade: due.grade,
    byWhen: due.byWhen,
    key: due.key,
    faults: due.faults.map(refOf),
    parts: [],
    why: due.why.flatMap((why) => names.why(why) ?? []),
  };
}
