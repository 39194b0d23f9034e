/**
 * A hand-over as facts: what is said first, every finding lettered, the work, and so on, each with its figures and no
 * sentence of its own. One model, several forms (pages, text, tables, calendar). Types only.
 */
import type { Audience, Grade, IsoDate, Three } from "../../terms/index.js";
import type {
  CarTold,
  CautionTold,
  ClaimTold,
  ComplaintAnswer,
  DoneTold,
  FaultRef,
  FaultTold,
  Figure,
  FirstUntold,
  GateTold,
  JobTold,
  LooseTold,
  MoneyTold,
  NotSeen,
  OpeningTold,
  PictureTold,
  PlanTold,
  ReadingTold,
  ReleaseTold,
  SheetTold,
  SignatureTold,
  TrendTold,
  VisitTold,
} from "./input.js";

export interface HandoverModel {
  readonly for: Audience;
  readonly madeAt: string;
  readonly engine: string;
  readonly visit: VisitTold;
  readonly car: CarTold;
  readonly first: FirstPage;
  /** Lettered, worst first. */
  readonly findings: readonly LetteredFinding[];
  readonly notSeen: readonly NotSeen[];
  readonly gates: readonly GateTold[];
  /** Worst signal word first. */
  readonly cautions: readonly CautionTold[];
  readonly readings: readonly ReadingTold[];
  /** Numbered, most urgent first. */
  readonly work: readonly NumberedJob[];
  readonly declined: readonly NumberedJob[];
  readonly done: readonly DoneTold[];
  readonly money?: MoneyTold | undefined;
  readonly firstUntold?: FirstUntold | undefined;
  readonly loose: readonly LooseTold[];
  /** What is loose, promised or waited for is not known. */
  readonly isProgressUnread: boolean;
  readonly trends: readonly TrendTold[];
  readonly dates: readonly DueDate[];
  /** Earlier visits of the car that could not be read. */
  readonly visitsUnread: number;
  readonly pictures: readonly PictureTold[];
  readonly picturesLeft: readonly string[];
  readonly sheets: readonly SheetTold[];
  readonly plan?: PlanTold | undefined;
  readonly release?: ReleaseTold | undefined;
  /** None for a buyer. */
  readonly signatures: readonly SignatureTold[];
  /** For a buyer only. */
  readonly buying?: Buying | undefined;
}

/** The first page: complaint and answer, may it be driven, what cannot wait, what next, what was looked at. */
export interface FirstPage {
  readonly complaints: readonly ComplaintLine[];
  readonly verdict: Verdict;
  readonly cannotWait: readonly CannotWait[];
  readonly next: readonly NextStep[];
  readonly looked: Looked;
  readonly money?: MoneyLine | undefined;
}

export interface ComplaintLine {
  readonly id: string;
  readonly words: string;
  /** Undefined: open. */
  readonly answer?: ComplaintAnswer | undefined;
  /** Letters of the findings that answer it. */
  readonly letters: readonly string[];
}

/**
 * May it be driven? From worst to best. The best of them still promises nothing: it tells that nothing was found and
 * that everything asked was looked at.
 */
export const VERDICTS = [
  "do-not-drive",
  "workshop-only",
  "put-right-first",
  "laid-up",
  "not-shown",
  "nothing-against",
] as const;
export type VerdictKind = (typeof VERDICTS)[number];

export interface Verdict {
  readonly is: VerdictKind;
  /** What an owner is told in a word. */
  readonly owner: "dont-drive" | "tell" | "laid-up" | "not-shown" | "fine";
  /** Everything that makes it so, gravest first; also what would have made a milder one so. */
  readonly reasons: readonly VerdictReason[];
}
export type VerdictReason =
  | { readonly is: "laid-up" | "nothing-looked-at" | "no-gate" | "answers-unread" | "progress-unread" }
  | { readonly is: "dangerous" | "major" | "close"; readonly letters: readonly string[] }
  | { readonly is: "gate-tripped" | "gate-not-cleared"; readonly gates: readonly string[] }
  | { readonly is: "forbidden" | "workshop"; readonly cautions: readonly string[] }
  | { readonly is: "not-released"; readonly words: string }
  | { readonly is: "left-loose"; readonly count: number }
  | { readonly is: "work-before-driving"; readonly numbers: readonly number[] }
  | { readonly is: "work-not-looked-at"; readonly jobs: readonly string[] }
  | { readonly is: "done-not-checked"; readonly letters: readonly string[] }
  | { readonly is: "not-enough-seen"; readonly sheets: readonly string[] }
  | { readonly is: "not-seen" | "unread"; readonly count: number }
  | { readonly is: "differ" | "provisional"; readonly letters: readonly string[] }
  | { readonly is: "complaints-open"; readonly count: number };

/** A finding that cannot wait, and what is to be done about it. */
export interface CannotWait {
  readonly letter: string;
  readonly grade: Grade;
  readonly close: boolean;
  readonly title: string;
  readonly where: string;
  /** For an owner only. */
  readonly beforeDriving?: BeforeDriving | undefined;
  /** Numbers of the jobs that put it right, are not declined and not left out; none: no work is planned for it. */
  readonly jobs: readonly number[];
  /** Numbers of those the owner said no to. */
  readonly declined: readonly number[];
}

/** In the order of doing: what keeps the car where it is, what comes before the next drive, what is grave, days, looking. */
export type NextStep =
  | { readonly is: "do-not-drive" }
  | { readonly is: "make-fast"; readonly what: readonly string[] }
  /** Checks that ask for the same stand together. */
  | { readonly is: "wake-up" }
  | { readonly is: "clear-gate"; readonly gates: readonly string[]; readonly first: readonly string[] }
  | { readonly is: "look-second"; readonly jobs: readonly string[] }
  | { readonly is: "measure-again"; readonly letter: string; readonly title: string; readonly where: string }
  | { readonly is: "find-work"; readonly letter: string; readonly title: string; readonly where: string }
  | { readonly is: "decide"; readonly number: number; readonly title: string; readonly where: string }
  | { readonly is: "do-job"; readonly number: number; readonly title: string; readonly where: string }
  | { readonly is: "answer-complaint"; readonly words: string; readonly needs?: string | undefined }
  | { readonly is: "look-at-rest"; readonly count: number }
  | { readonly is: "date"; readonly date: DueDate };

/** In numbers. `sound` counts nothing but what was really answered. */
export interface Looked {
  readonly answered: number;
  readonly of: number;
  readonly sound: number;
  readonly notSeen: number;
  readonly cannotReach: number;
  /** Answered in a way that cannot count. */
  readonly notChecked: number;
  readonly notForThisLook: number;
  readonly grades: Readonly<Record<Grade, number>>;
}

/** Money on the first page: always the high figure against the budget. */
export interface MoneyLine {
  readonly total: Three;
  readonly budget?: number | undefined;
  /** High figure and what is spent, above the budget; 0: within it. */
  readonly overBy?: number | undefined;
  /** Only where nothing that has to be done is missing from the sum. */
  readonly left?: number | undefined;
  /** Findings that need work and have none, and what no sum holds. */
  readonly withoutWork: number;
  readonly missing: number;
}

/** From worst to mildest: it stays where it is, mended before the next drive, no farther than a workshop, before normal use. */
export type BeforeDriving = "do-not-drive" | "next-drive" | "workshop-only" | "normal-use";

export interface LetteredFinding extends FaultTold {
  readonly letter: string;
  /** For an owner only. */
  readonly beforeDriving?: BeforeDriving | undefined;
  readonly pictures: readonly PictureTold[];
  readonly numbers: readonly number[];
}

export interface NumberedJob extends JobTold {
  readonly number: number;
  readonly letters: readonly string[];
}

/** A day or distance to think of, wherever it comes from. */
export interface DueDate {
  /** Stable over hand-overs of one visit. */
  readonly id: string;
  /** Number of the job it belongs to. */
  readonly number?: number | undefined;
  readonly is: "job" | "decided" | "re-torque" | "look-again" | "part" | "next-visit" | "other";
  readonly words: string;
  readonly where: string;
  readonly on?: IsoDate | undefined;
  /** Comes again every month from that day on, the last time on this day at the latest. */
  readonly monthlyUntil?: IsoDate | undefined;
  /** From the day of the visit on. */
  readonly distance?: Figure | undefined;
  /** What the odometer then shows. */
  readonly odometer?: Figure | undefined;
  /** Should have been looked at by then. */
  readonly isOverdue?: true | undefined;
}

/** What a buyer takes to the table. */
export interface Buying {
  /** What is due, each with its figures where they are known. */
  readonly due: readonly NumberedJob[];
  /** What is opened for the work. */
  readonly openings: readonly OpeningTold[];
  /** Sum of the known figures, openings once; undefined where none is known, and while a check before a price is shut. */
  readonly total?: Three | undefined;
  /** Jobs of `due` in no sum. */
  readonly withoutFigure: number;
  readonly walkAway: readonly WalkAway[];
  /** Checks before any figure is named that are shut or were never opened: no sum is told until they are. */
  readonly held: readonly GateTold[];
  /** What was claimed, with what was seen of it; what was not shown counts as not done. */
  readonly claims: readonly ClaimTold[];
  /** What nobody could look at, gravest first. */
  readonly risks: readonly NotSeen[];
}

/** Why one would leave the car where it stands, and what that rests on. */
export interface WalkAway extends FaultRef {
  readonly letter: string;
  readonly title: string;
  readonly where: string;
  readonly basis: "graded-dangerous" | "must-stand" | "structure" | "worst-outcome" | "no-work-known";
  /** Of `structure`: the published item. */
  readonly item?: string | undefined;
}
