/** What an opened set of sheets looks like from inside assessing. Types only; knows no visit. */
import type { Evaluate, Measured, Outcome, Scope } from "../expr/run.js";
import type {
  BareCommon,
  CarLimit,
  Common,
  Complaint,
  Derived,
  Field,
  Gate,
  Limit,
  Point,
  Rule,
} from "../sheet/run.js";
import type { Grade, GradeLevel, Problem } from "../terms/index.js";
import type { Bands, Direction } from "./band.js";
import type { Aggregate } from "./reading.js";

export type FieldKind = "word" | "words" | "reading" | "count" | "yes" | "date-code";

export interface FieldInfo {
  readonly name: string;
  readonly field: Field;
  readonly kind: FieldKind;
  /** Readings only: ± in canonical size, shots asked for. */
  readonly setUp: number;
  readonly shots: number;
}

export interface PointInfo {
  readonly id: string;
  readonly sheet: string;
  readonly point: Point;
  readonly fields: readonly FieldInfo[];
  /** As the sheets list them. */
  readonly order: number;
  /** Car states in walking order. */
  readonly states: readonly string[];
  readonly askedWhen: Evaluate | undefined;
  readonly safetyCritical: boolean;
}

/** A default limit with its edges in canonical numbers. */
export interface LimitInfo {
  readonly limit: Limit;
  readonly order: number;
  readonly direction: Direction;
  readonly aggregate: Aggregate;
  readonly bands: Bands;
  readonly applies: Evaluate | undefined;
}

export interface DerivedInfo {
  readonly derived: Derived;
  /** Formula with uncertainty carried through it; absent for `prefer`. */
  readonly formula: ((scope: Scope, here: string) => Outcome<Measured>) | undefined;
  readonly prefer: readonly string[];
}

/** What a name in a condition stands for. `limits` are those over it, in sheet order. */
export type RefInfo = { readonly index: number; readonly name: string; readonly limits: readonly LimitInfo[] } & (
  | { readonly is: "field"; readonly point: PointInfo; readonly field: FieldInfo }
  | { readonly is: "derived"; readonly derived: DerivedInfo }
  /** Belongs to a sheet that is not loaded. */
  | { readonly is: "stranger"; readonly point: string; readonly field: string }
);

export type Pass = 1 | 2 | 3;
export interface RuleInfo {
  readonly rule: Rule;
  readonly order: number;
  readonly pass: Pass;
  /** Sheets that must be open for it. */
  readonly sheets: readonly string[];
  readonly when: Evaluate | undefined;
  readonly supports: readonly (Evaluate | undefined)[];
  readonly worse: { readonly grade: Grade; readonly when: Evaluate | undefined } | undefined;
  readonly where: Evaluate | undefined;
  /** The reading whose band gives the grade. */
  readonly limitOf: RefInfo | undefined;
  readonly atLeast: Grade | undefined;
  readonly fixed: Grade | undefined;
  /** The worst this rule could say: ranks what is worth settling. */
  readonly worst: GradeLevel;
}

export interface GateInfo {
  readonly id: string;
  readonly guards: string;
  /** It stands before leaving, or before a car state in which the car drives. */
  readonly drives: boolean;
  readonly starts: Gate["starts"];
  readonly trips: readonly { readonly path: string; readonly when: Evaluate | undefined }[];
  readonly clears: readonly { readonly path: string; readonly when: Evaluate | undefined }[];
  readonly set: readonly string[];
  readonly cautions: readonly string[];
  /** Sheets its set or conditions name that are not loaded. */
  readonly missingSheets: readonly string[];
}

/** A gauge as declared in the shared files. */
export type GaugeInfo = Common["gauges"][number];

/** A figure of the limits book with its edges in canonical numbers. */
export interface BookFigure {
  readonly figure: CarLimit;
  readonly over: LimitInfo;
  readonly bands: Bands;
}

export interface Model {
  readonly sheets: readonly string[];
  readonly common: BareCommon;
  readonly complaints: readonly Complaint[];
  readonly points: readonly PointInfo[];
  /** By id, as it is and with `_` for `-`. */
  readonly pointById: ReadonlyMap<string, PointInfo>;
  readonly limits: readonly LimitInfo[];
  readonly limitById: ReadonlyMap<string, LimitInfo>;
  readonly derived: readonly DerivedInfo[];
  readonly rules: readonly RuleInfo[];
  readonly gates: readonly GateInfo[];
  readonly gauges: ReadonlyMap<string, GaugeInfo>;
  readonly signals: ReadonlyMap<string, "danger" | "warning" | "caution" | "notice">;
  readonly stateOrder: ReadonlyMap<string, number>;
  readonly refs: readonly RefInfo[];
  /** What a name (point, `point_field`, derived) stands for; undefined when nothing loaded has it. */
  readonly named: (name: string) => RefInfo | undefined;
  /** What a condition's reference stands for; one not loaded becomes a stranger. */
  readonly refOf: (ref: { readonly point: string; readonly field: string }) => RefInfo;
  readonly problems: readonly Problem[];
}

/** Ids compare with `-` and `_` alike. */
export const plainId = (id: string): string => id.replaceAll("-", "_");
/** The sheet an id belongs to: what stands before its first dot. */
export const sheetOf = (id: string): string => id.slice(0, Math.max(0, id.indexOf(".")));
