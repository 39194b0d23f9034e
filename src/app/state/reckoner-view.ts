/** The trade functions as a list to choose from, by subject or found by a word; the visits a sum can be kept in. Pure. */

import type { Summary } from "../../core/record/index.js";
import { SUBJECTS, type Subject, type TradeFunction } from "../../core/trade/index.js";
import { t } from "../texts/bench.js";
import { carName } from "./cars-view.js";

export interface SubjectOfBench {
  readonly subject: Subject;
  readonly says: string;
  readonly functions: readonly TradeFunction[];
}

const wordsOf = (typed: string): readonly string[] => typed.toLowerCase().split(/\s+/).filter(Boolean);

/** Functions in whose name, arguments or subject every typed word stands; all of them while nothing is typed. */
export function functionsFound(typed: string): readonly SubjectOfBench[] {
  const wanted = wordsOf(typed);
  // The table's own keys.
  const subjects = Object.keys(SUBJECTS) as Subject[];
  return subjects.flatMap((subject) => {
    const says = t(`bench.subject.${subject}`);
    const functions = SUBJECTS[subject].filter((fn) => {
      const text = [says, fn.says, ...fn.arguments.map((argument) => argument.says)].join(" ").toLowerCase();
      return wanted.every((word) => text.includes(word));
    });
    return functions.length === 0 ? [] : [{ subject, says, functions }];
  });
}

export interface OpenVisit {
  readonly stream: string;
  /** The car's name. */
  readonly title: string;
  /** When it was opened, in ms. */
  readonly on: number;
}

/** Visits left open on this phone, the newest first. */
export function openVisits(summaries: readonly Summary[]): readonly OpenVisit[] {
  const names = new Map(summaries.flatMap((one) => (one.of === "car" ? [[one.stream, carName(one)]] : [])));
  return summaries
    .flatMap((one) =>
      one.of === "visit" && !one.closed
        ? [{ stream: one.stream, title: names.get(one.car) ?? "", on: Date.parse(one.on) }]
        : [],
    )
    .sort((a, b) => b.on - a.on);
}
