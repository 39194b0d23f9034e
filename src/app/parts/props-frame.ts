/**
 * What the frame parts are given: top line, sections, surfaces, sheets, fields, buttons, notices. Types only; no
 * words of any language, no state of the record.
 */
import type { ComponentChildren } from "preact";
import type { MarkKind, TickLook } from "../../core/report/index.js";

/** Something that can be pressed: an address inside the app, or an act. Give one of the two. */
export interface Press {
  readonly href?: string | undefined;
  readonly onPress?: (() => void) | undefined;
}

/** How keeping stands. Words always come along; on a narrow phone the stroke alone is shown and the words are its name. */
export type KeepingKind = "kept" | "keeping" | "no-signal" | "room" | "error";

export interface TopLineProps {
  /** 'Visit', the place one goes back to; the chevron is drawn. */
  readonly back?: (Press & { readonly words: string }) | undefined;
  /** Plain words on the left when there is no way back. */
  readonly words?: string | undefined;
  /** Keeping state on the right; announced politely. `keeping` only after a second: the caller waits. */
  readonly keeping?: (Press & { readonly kind: KeepingKind; readonly words: string }) | undefined;
  /** Between the two; the keeping state is then its stroke alone. */
  readonly middle?: ComponentChildren | undefined;
  /** Plain words on the right instead of a keeping state: '4 cautions'. */
  readonly aside?: string | undefined;
}

export interface SectionRowProps {
  /** Name of the navigation for screen readers. */
  readonly label: string;
  readonly sections: readonly {
    readonly id: string;
    readonly words: string;
    readonly href: string;
    readonly here: boolean;
  }[];
}

/** Screen or station title, 34 px, with a second line and, right, a count with graduations. */
export interface TitleProps {
  readonly title: string;
  readonly second?: string | undefined;
  /** `point`: 28 px, for the screen of one reading. */
  readonly size?: "screen" | "point" | undefined;
  /** '5' and ' of 12 points'. */
  readonly figure?: { readonly count: string; readonly rest: string } | undefined;
  readonly ticks?: readonly TickLook[] | undefined;
  /** Element the router moves the focus to after a change of screen. */
  readonly id?: string | undefined;
}
export type { TickLook };
export interface TicksProps {
  readonly ticks: readonly TickLook[];
  /** Accessible name; absent: hidden from screen readers because the words stand beside it. */
  readonly label?: string | undefined;
}

/** The lit surface. One per screen. */
export interface PoolProps {
  readonly children: ComponentChildren;
  readonly as?: "main" | "section" | "div" | undefined;
  /** Name of the region, for `section`. */
  readonly label?: string | undefined;
  /** `line`: a lead-coloured edge above (default). `joined`: the cone of a plan above draws it. */
  readonly edge?: "line" | "joined" | undefined;
  /** `bare`: no padding of its own. */
  readonly bare?: boolean | undefined;
}

/** Head of the open point, in the pool. */
export interface QuestionProps {
  readonly question: string;
  /** How to look, one or two lines. */
  readonly how?: string | undefined;
  readonly id?: string | undefined;
}

/** A band of the page in shade with an optional heading. */
export interface BandProps {
  readonly heading?: string | undefined;
  readonly aside?: string | undefined;
  readonly children: ComponentChildren;
}

/** A part of a long list that opens. `open`: as it stands before anyone presses it, as while searching. */
export interface FoldProps {
  readonly title: string;
  readonly count: number | string;
  readonly open: boolean;
  readonly children: ComponentChildren;
}

/** The one next action (ink-inverse), or an outlined tool. */
export interface ButtonProps extends Press {
  readonly words: string;
  /** Second line, smaller. */
  readonly says?: string | undefined;
  readonly disabled?: boolean | undefined;
  /** Type of the native button; default `button`. */
  readonly type?: "button" | "submit" | undefined;
  readonly onward?: boolean | undefined;
}

/** Photo, Sound and Next within reach of the thumb; mirrored for the left hand. */
export interface ThumbZoneProps {
  /** Name of the group. */
  readonly label: string;
  readonly tools?:
    | readonly (Press & {
        readonly id: string;
        readonly words: string;
        /** Drawn above the words; absent: words alone, as wide as there is room. */
        readonly icon?: "photo" | "sound" | undefined;
        readonly disabled?: boolean | undefined;
      })[]
    | undefined;
  readonly next?: ButtonProps | undefined;
}

/** A band with mark or drawing left, words, figure right. Whole band is pressed when `href` or `onPress` is given. */
export interface ListRowProps extends Press {
  /** Number, mark or small drawing in the gutter. `null` keeps the gutter free among rows that have one. */
  readonly lead?: ComponentChildren | undefined;
  /** `wide`: 72 px gutter for the small car. */
  readonly gutter?: "narrow" | "wide" | undefined;
  readonly title: string;
  readonly second?: string | undefined;
  readonly aside?: ComponentChildren | undefined;
  /** 48–52 px, one line: a folded point. */
  readonly folded?: boolean | undefined;
  /** Marks the row one is at. */
  readonly here?: boolean | undefined;
}

/** A dialog from the bottom of the screen; Escape, the back gesture and the close button call `onClose`. */
export interface SheetProps {
  readonly open: boolean;
  readonly title: string;
  readonly closeWords: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
  /** `full` covers the screen (pictures). */
  readonly form?: "bottom" | "full" | undefined;
  /** Buttons that stay at the foot. */
  readonly foot?: ComponentChildren | undefined;
}

export interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly kind: "text" | "number" | "area" | "date" | "select" | "search";
  readonly value: string;
  readonly onInput: (value: string) => void;
  /** Fires when the person leaves the field or picks an option. */
  readonly onCommit?: ((value: string) => void) | undefined;
  readonly help?: string | undefined;
  /** What is wrong with the value; shown and announced. */
  readonly problem?: string | undefined;
  readonly options?: readonly { readonly value: string; readonly words: string }[] | undefined;
  /** Words after the box: the unit. */
  readonly unit?: string | undefined;
  readonly required?: boolean | undefined;
  readonly autocomplete?: string | undefined;
  readonly maxLength?: number | undefined;
}

export interface SwitchProps {
  readonly id: string;
  readonly label: string;
  readonly says?: string | undefined;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  /** 'on' and 'off' in the person's language, shown beside the drawing. */
  readonly words: { readonly on: string; readonly off: string };
}

/** Two to four short words side by side, one of them chosen: units, theme, hand. */
export interface UnitSwitchProps {
  readonly label: string;
  readonly choices: readonly {
    readonly id: string;
    readonly words: string /** Spoken name when the words are short. */;
    readonly name?: string | undefined;
  }[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

/** State of keeping told at length; an error stays until dealt with and is announced at once. */
export interface NoticeProps {
  readonly kind: KeepingKind | "plain";
  readonly title: string;
  readonly says?: string | undefined;
  readonly action?: (Press & { readonly words: string }) | undefined;
  readonly second?: (Press & { readonly words: string }) | undefined;
}

export interface EmptyStateProps {
  readonly title: string;
  readonly says: string;
  /** Dotted car above the words. */
  readonly drawing?: "body" | "chassis" | undefined;
  readonly action?: ButtonProps | undefined;
}

export interface ThumbProps extends Press {
  /** Object URL of the small picture; absent while it is being made or when it can't be shown. */
  readonly src?: string | undefined;
  readonly alt: string;
  readonly state: "kept" | "keeping" | "not-kept" | "unreadable";
  /** Words for a state other than kept, shown on the tile. */
  readonly words?: string | undefined;
  /** The picture is drawn: its object URL may be given back. */
  readonly onShown?: (() => void) | undefined;
  /** Whether it is chosen among others; absent where nothing is chosen. */
  readonly chosen?: boolean | undefined;
}

/** The small car of a list, 72 px: dotted when never looked at. */
export interface SmallCarProps {
  readonly looked: boolean;
  readonly label?: string | undefined;
}

export interface GradeMarkProps {
  readonly mark: MarkKind;
  /** Height in px at normal text size; grows with the text. 34 open finding, 24 list (default), 22 strip, 18 least. */
  readonly size?: 34 | 24 | 22 | 20 | 18 | undefined;
  /** Accessible name. Absent: hidden, because its word stands beside it. */
  readonly label?: string | undefined;
}
