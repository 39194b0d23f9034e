/**
 * What the parts of looking are given: plan, replies, non-answers, keypad, scale. Types only; neither words of any
 * language nor judgement.
 */
import type { ComponentChildren } from "preact";
import type { PlanKind, PlanPlace, PlanSide, ScaleInput } from "../../core/report/index.js";
import type { NonAnswer, Reason } from "../../core/terms/index.js";
import type { Press } from "./props-frame.js";

/** A place on the plan with its names. */
export interface CarPlanPlace extends PlanPlace {
  /** 'Rear left' */
  readonly words: string;
  /** How it stands, for the list and screen readers: '5 of 12 points', 'not looked at'. */
  readonly says: string;
}
export interface CarPlanProps {
  readonly plan: PlanKind;
  readonly side: PlanSide;
  readonly places: readonly CarPlanPlace[];
  /** Accessible name of the drawing: 'Plan of the car seen from above, nose left'. */
  readonly label: string;
  /** 'front', written at the nose. */
  readonly front?: string | undefined;
  /** Name of the list of places, and of the fold that holds it when the text is very large. */
  readonly listWords: string;
  /** Way-finder: called with the place pressed. Absent: a picture only. */
  readonly onPlace?: ((id: string) => void) | undefined;
  /** Look of lines no place of this visit stands for; default `ghost`, thin and solid. */
  readonly rest?: "ghost" | "not-looked" | "done";
  /** Cone from the place one is at down to the pool below (default true); false on the list of cars. */
  readonly cone?: boolean | undefined;
}

export interface ReplyItem {
  readonly id: string;
  readonly words: string;
  /** Second line, smaller. */
  readonly says?: string | undefined;
  readonly chosen: boolean;
  /** Line sketch of what is seen: an id of `sketches.tsx`, or a drawing of the caller's. */
  readonly sketch?: ComponentChildren | undefined;
}
export interface ReplyGridProps {
  /**
   * `one`: buttons of which one is pressed, kept at once. `several`: checkboxes. `choice`: radios of a form that is
   * kept later; arrows choose.
   */
  readonly kind: "one" | "several" | "choice";
  /** Accessible name of the group: the question. */
  readonly label: string;
  /** One line above the replies that is said of the group as well: 'Choose all that are true.' */
  readonly says?: string | undefined;
  readonly replies: readonly ReplyItem[];
  /** `chosen` is what the reply becomes; one of several that exclude each other, pressed again, calls nothing. */
  readonly onChoose: (id: string, chosen: boolean) => void;
  /** Owner wording uses 1; default: 2 unless words are long. */
  readonly columns?: 1 | 2 | undefined;
  /** The last reply: 'Can't get at it'. Says what stands when it is chosen. */
  readonly last?:
    | {
        readonly words: string;
        readonly says?: string | undefined;
        readonly chosen: boolean;
        readonly onPress: () => void;
        readonly sketch?: ComponentChildren | undefined;
      }
    | undefined;
  readonly disabled?: boolean | undefined;
}

/** The four non-answers; those with reasons ask for one before they count. */
export interface NonAnswersProps {
  readonly label: string;
  readonly choices: readonly {
    readonly id: NonAnswer;
    readonly words: string;
    readonly says?: string | undefined;
    readonly reasons?: readonly { readonly id: Reason; readonly words: string }[] | undefined;
  }[];
  /** 'Why?' above the reasons. */
  readonly reasonLabel: string;
  readonly chosen?: { readonly nonAnswer: NonAnswer; readonly reason?: Reason | undefined } | undefined;
  /** Opened at once, so that the usual way is two presses. */
  readonly start?: NonAnswer | undefined;
  readonly onChoose: (nonAnswer: NonAnswer, reason?: Reason) => void;
}

/** The big figure being entered: a real text box without the phone's keyboard, so that paste and hardware keys work. */
export interface ReadingEntryProps {
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** Enter key: keep it. */
  readonly onKeep?: (() => void) | undefined;
  /** Why it can't be read, or the question to look again. Announced. */
  readonly problem?: string | undefined;
  /** What is to be known of the figure besides: another unit, which reading it replaces. Announced. */
  readonly says?: string | undefined;
  readonly children?: ComponentChildren | undefined;
}

export interface KeypadProps {
  /** Accessible name of the group. */
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** The locale's decimal sign; absent: whole numbers only. */
  readonly decimal?: "." | "," | undefined;
  /** Minus key where the quantity can be negative. */
  readonly minus?: boolean | undefined;
  /** Fraction key when the unit is inch: writes `3/32`; pressed again after `1/` it makes `1 ` for `1 3/32`. */
  readonly fraction?: boolean | undefined;
  /** Spoken names of keys that show a sign only. */
  readonly words: {
    readonly rubOut: string;
    readonly decimal: string;
    readonly minus?: string | undefined;
    readonly fraction?: string | undefined;
  };
  /** Results beside a number: 'No echo'. At most two. */
  readonly extra?: readonly { readonly id: string; readonly words: string; readonly onPress: () => void }[] | undefined;
  /** Sits in the tool column, away from 0. */
  readonly camera?: { readonly words: string; readonly onPress: () => void } | undefined;
  /** Stays with the keys when the page scrolls: the ReadingEntry. */
  readonly children?: ComponentChildren | undefined;
  /** 'Keep 1.26 mm'; while a figure is asked about, 'Change it', so that a second press in the same place accepts nothing. */
  readonly keep: { readonly words: string; readonly disabled?: boolean | undefined; readonly onPress: () => void };
}

export interface ReadingScaleProps {
  readonly scale: ScaleInput;
  /** The scale in one sentence for screen readers. */
  readonly label: string;
  /** 'Too close to call', with '81 % left' at the right and one line below. Polite announcement. */
  readonly verdict?:
    | { readonly title: string; readonly aside?: string | undefined; readonly says?: string | undefined }
    | undefined;
  /** Where the limit comes from; opens the source. */
  readonly source?: (Press & { readonly words: string }) | undefined;
}

export interface ReadingListProps {
  readonly label: string;
  readonly readings: readonly (Press & {
    readonly id: string;
    /** As written in the locale. */
    readonly value: string;
    /** '1', 'lowest', 'mean'. */
    readonly caption: string;
    /** Accessible name where it can be pressed: 'Reading 1, 0.22 mm'. */
    readonly name?: string | undefined;
    readonly kind: "kept" | "now" | "derived";
  })[];
}

export interface GaugeLineProps {
  readonly words: string;
  readonly action?: (Press & { readonly words: string }) | undefined;
}

/** A stopwatch reply: runs on the screen, hands over seconds as a decimal text. The clock comes from outside. */
export interface StopwatchProps {
  readonly label: string;
  /** Milliseconds on any steadily running clock: `() => performance.now()`. */
  readonly clock: () => number;
  /** The locale's writing of seconds. */
  readonly write: (seconds: number) => string;
  readonly words: {
    readonly start: string;
    readonly stop: string;
    readonly again: string;
    readonly keep: (written: string) => string;
    /** Announced once `until` is reached. */
    readonly reached?: string | undefined;
  };
  /** Seconds after which the time is up; it runs on until it is stopped. */
  readonly until?: number | undefined;
  /** Called once when it is up. */
  readonly onReached?: (() => void) | undefined;
  readonly disabled?: boolean | undefined;
  readonly onKeep: (seconds: number) => void;
}
