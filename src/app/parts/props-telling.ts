/**
 * What the parts that tell results are given: findings, their because, cautions, gates, jobs. Types only; refuses to
 * grade, order or word anything.
 */
import type { ComponentChildren } from "preact";
import type { MarkKind } from "../../core/report/index.js";
import type { Press } from "./props-frame.js";

export interface BecauseStep extends Press {
  readonly id: string;
  /** 'Seen', 'Heard', 'Felt', 'Measured', 'Limit', 'So', 'To settle it'. */
  readonly kind: string;
  readonly says: string;
  /** Time, photo, source. */
  readonly aside?: string | undefined;
  /** What opens below it: how a value came about. */
  readonly inside?: (() => ComponentChildren) | undefined;
  /** The step that concludes. */
  readonly concludes?: boolean | undefined;
}
export interface DisclosureProps {
  readonly class?: string | undefined;
  readonly children: ComponentChildren;
  /** Drawn once it is open. */
  readonly inside: () => ComponentChildren;
}

export interface BecauseTraceProps {
  readonly label: string;
  readonly steps: readonly BecauseStep[];
}

export interface FindingRowProps extends Press {
  readonly mark: MarkKind;
  /** The grade's word; stands at the head of the second line. */
  readonly markWord: string;
  readonly title: string;
  /** Place, reading, how sure. */
  readonly second?: string | undefined;
  readonly aside?: string | undefined;
  /** Open: 34 px mark, 24 px title, children (trace, tools) below; put it in a Pool. */
  readonly open?: boolean | undefined;
  readonly children?: ComponentChildren | undefined;
}

export interface CountStripProps {
  /** Name of the group of filters. */
  readonly label: string;
  readonly counts: readonly {
    readonly mark: MarkKind;
    readonly words: string;
    readonly count: number;
    readonly chosen: boolean;
  }[];
  readonly onChoose: (mark: MarkKind, chosen: boolean) => void;
  /** One plain sentence below the marks. */
  readonly sentence?: string | undefined;
}

/** Signal words of ISO 3864-2 / ANSI Z535. */
export type Signal = "danger" | "warning" | "caution" | "notice";
export interface CautionPanelProps extends Press {
  /** `bar`: one line that opens the rest. `full`: the worst one. `small`: 132 px panel and two lines. */
  readonly form: "bar" | "full" | "small";
  readonly signal: Signal;
  /** The signal word in the person's language, written in capitals by the style. */
  readonly word: string;
  /** What not to do. */
  readonly not: string;
  readonly why?: { readonly label: string; readonly says: string } | undefined;
  readonly can?: { readonly label: string; readonly says: string } | undefined;
  readonly todo?: { readonly label: string; readonly says: string } | undefined;
  /** `full` and `small`: 'Owner told 25 Nov, 11:04'. */
  readonly told?: string | undefined;
  /** Level of the heading of `full`; default 2. */
  readonly level?: 1 | 2 | 3 | undefined;
}

export interface GateNoticeProps {
  readonly state: "tripped" | "cleared" | "not-cleared";
  /** 'Road test' */
  readonly title: string;
  /** Its own page; absent there. */
  readonly href?: string | undefined;
  /** 'Stopped', 'Not cleared: do this first', 'Cleared'. */
  readonly stateWords: string;
  readonly says?: string | undefined;
  /** What to do first; each opens its point. */
  readonly first?:
    | readonly (Press & { readonly id: string; readonly words: string; readonly done?: boolean | undefined })[]
    | undefined;
  /** Its caution, in the small form. */
  readonly cautions?: readonly CautionPanelProps[] | undefined;
}

export interface JobRowProps extends Press {
  readonly number: number;
  readonly title: string;
  readonly mark: MarkKind;
  readonly markWord: string;
  readonly byWhen: string;
  /** '0.6–1.5 h' */
  readonly hours?: string | undefined;
  readonly cost?: string | undefined;
  /** Small line of its own: 'with what is open anyway 0.6 h, alone 3.4 h'. */
  readonly apart?: string | undefined;
  /** The owner's word in brief: 'Owner: yes, now'. */
  readonly word?: string | undefined;
  /** How its parts stand: 'waiting for the bearing', 'ordered, here 9 Dec'. */
  readonly parts?: string | undefined;
  readonly open?: boolean | undefined;
  /** Why it stands here. */
  readonly why?: string | undefined;
  readonly decision?: (Press & { readonly label: string; readonly value: string; readonly action: string }) | undefined;
  readonly children?: ComponentChildren | undefined;
}

export interface BundleBracketProps {
  /** 'Rear left wheel and hub off' */
  readonly title: string;
  /** '0.9–1.3 h once' */
  readonly aside?: string | undefined;
  readonly children: ComponentChildren;
}
