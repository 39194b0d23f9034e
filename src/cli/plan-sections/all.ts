/** Every section a planning file may hold, in the order they are looked for. */
import { halfLife } from "./life.js";
import { guard, several } from "./limits.js";
import { splitMoney } from "./money.js";
import type { Section } from "./section.js";
import { trend } from "./trend.js";
import { priorityOrder, riskMatrix, sumOfWeights } from "./urgency.js";

const ALL: readonly Section[] = [riskMatrix, priorityOrder, sumOfWeights, splitMoney, guard, trend, halfLife, several];

export const SECTIONS: ReadonlyMap<string, Section> = new Map(ALL.map((section) => [section.name, section]));
