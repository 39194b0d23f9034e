/**
 * What the parts of the planning screens are given: range, bundles, where the money reaches, entries of three figures,
 * days and budget, the way of a part, dates. Types only; every word and figure comes written, in the person's language.
 */
import type { ComponentChildren } from "preact";
import type { RangeInput, SpanInput } from "../../core/report/index.js";
import type { Press } from "./props-frame.js";

/** Ruler of money or hours with the lamp at the likely figure. */
export interface RangeScaleProps {
  readonly range: RangeInput;
  /** The whole in one sentence for screen readers: 'Likely €960, from €685 to €1 290; budget €1 100'. */
  readonly label: string;
  /** Said below, announced politely: 'Under budget four times in five' with '€140 left' at the right. */
  readonly verdict?:
    | { readonly title: string; readonly aside?: string | undefined; readonly says?: string | undefined }
    | undefined;
}

/** What is opened once for several jobs; nested to three levels, a level for each thing opened inside another. */
export interface WorkBundleProps {
  /** 'Rear left wheel off' */
  readonly title: string;
  /** Right of the title: '3.4–5.1 h' for the whole bundle. */
  readonly aside?: string | undefined;
  /** A line of its own: 'opened and put back once, 1.3 h'. */
  readonly shared?: string | undefined;
  /** How deep it lies; decides the heading too (2, 3, 4). Default 1. */
  readonly level?: 1 | 2 | 3 | undefined;
  readonly children: ComponentChildren;
}

/**
 * Where the light ends in the list. Stands right behind the one Pool (`bare`) that holds what is lit; what comes
 * behind it lies in shade.
 */
export interface ReachLineProps {
  /** '€1 100 reaches to here' */
  readonly words: string;
  /** 'leaves €140', or 'over by €310'. */
  readonly aside?: string | undefined;
  /** The lit jobs cost more than the budget: the line is drawn double and `aside` is said strongly. */
  readonly over?: boolean | undefined;
  /** A second line: 'What must be done costs more than the budget'. */
  readonly says?: string | undefined;
}

/** Low, likely, high: texts as typed, in this order. */
export type ThreeTexts = readonly [low: string, likely: string, high: string];
/** Whole minutes or whole minor units of money. */
export type ThreeFigures = readonly [low: number, likely: number, high: number];

/** What is entered: minutes written `h:mm`, or money with as many decimals as the currency has. */
export type FigureKind =
  | { readonly of: "minutes" }
  | { readonly of: "money"; readonly digits: number; readonly decimal: "." | "," };

export interface ThreeEntryProps {
  /** Name of the group: 'Hours for the wheel bearing'. */
  readonly label: string;
  readonly kind: FigureKind;
  readonly values: ThreeTexts;
  readonly onValues: (values: ThreeTexts) => void;
  /** Only called with figures that read and rise. */
  readonly onKeep: (figures: ThreeFigures) => void;
  /** Sign of the unit, behind the word over each box: 'h', '€'. */
  readonly unit?: string | undefined;
  /** Said while nothing is wrong. */
  readonly says?: string | undefined;
  readonly words: {
    readonly low: string;
    readonly likely: string;
    readonly high: string;
    /** 'Low is more than likely', shown at once. */
    readonly lowOverLikely: string;
    readonly likelyOverHigh: string;
    /** 'Low is more than high', while likely is still empty. */
    readonly lowOverHigh: string;
    /** 'Write hours and minutes as 1:30', 'No figure: at most 2 places after the comma'. */
    readonly unreadable: string;
    /** 'Keep 0:40, 1:00, 1:30' is made from these three texts. */
    readonly keep: (values: ThreeTexts) => string;
    /** Next empty box; on the same key while one is empty. */
    readonly next: string;
    /** Name of the group of keys. */
    readonly keys: string;
    readonly rubOut: string;
    readonly decimal: string;
  };
}

export interface DayEntryProps {
  readonly id: string;
  readonly label: string;
  /** `YYYY-MM-DD`, or empty. */
  readonly value: string;
  /** A whole date, or empty when it was taken away. */
  readonly onDay: (day: string) => void;
  /** 'today', '+1 week', each with its day. */
  readonly quick: readonly { readonly id: string; readonly words: string; readonly day: string }[];
  /** Name of the group of quick keys. */
  readonly quickLabel: string;
  readonly earliest?: string | undefined;
  readonly latest?: string | undefined;
  /** 'Wed 9 Dec 2026, a shut day', said below. */
  readonly says?: string | undefined;
  readonly problem?: string | undefined;
}

/** A budget by big steps, or typed. No slider. */
export interface BudgetChooserProps {
  readonly id: string;
  readonly label: string;
  /** As typed, in the locale's writing. */
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** Fires when the person leaves the box or presses Enter. */
  readonly onCommit?: ((value: string) => void) | undefined;
  /** '€', behind the box. */
  readonly unit: string;
  /** Downward keys, the smaller step first: '−100', '−500'. */
  readonly down: readonly BudgetStep[];
  /** Upward keys, the smaller step first: '+100', '+500'. */
  readonly up: readonly BudgetStep[];
  /** Name of the group of steps. */
  readonly stepsLabel: string;
  readonly says?: string | undefined;
  readonly problem?: string | undefined;
}
export interface BudgetStep {
  readonly id: string;
  readonly words: string;
  /** Spoken: '100 euros less'. */
  readonly name: string;
  readonly disabled?: boolean | undefined;
  readonly onPress: () => void;
}

/** The way of a part: ordered, promised, arrived, checked, fitted. Graduations with words; `here` is warm. */
export interface StepLineProps {
  /** 'Where the wheel bearing is' */
  readonly label: string;
  readonly steps: readonly {
    readonly id: string;
    readonly words: string;
    readonly look: "done" | "here" | "open";
    /** Below its word: '3 Dec'. */
    readonly aside?: string | undefined;
    /** Read out behind the words, since the height of a stroke can't be heard: 'done', 'still to come'. */
    readonly spoken: string;
  }[];
}

/** What holds the car up, with how long. */
export interface HoldLineProps extends Press {
  /** 'The bearing holds the car up' */
  readonly title: string;
  /** '12 days' */
  readonly days: string;
  /** 'Order by Fri 27 Nov, here Wed 9 Dec.' */
  readonly says?: string | undefined;
}

/** Days as a ruler, jobs as strokes for each person and the lift, arrivals as marks. */
export interface SpanStripProps {
  readonly span: SpanInput;
  /** Name of the list that says the same as the drawing. */
  readonly label: string;
  /** The drawing in sentences, in order of days; read out always, shown where text is too large for the drawing. */
  readonly lines: readonly { readonly id: string; readonly words: string }[];
  /** What the signs mean: 'tall stroke: a part comes in'. */
  readonly signs?: string | undefined;
}
