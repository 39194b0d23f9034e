/** Every section a planning file may hold, in the order they are looked for. */
import { accessSection, opportunities, sharedSplit } from "./access.js";
import { choiceSection } from "./choice.js";
import { benchmarks, cpm, leadTime, smallPlans, stranding } from "./dates.js";
import { labourSum, pert } from "./hours.js";
import { halfLife } from "./life.js";
import { guard, several } from "./limits.js";
import { splitMoney, taxRounding } from "./money.js";
import type { Section } from "./section.js";
import { trend } from "./trend.js";
import { priorityOrder, riskMatrix, sumOfWeights } from "./urgency.js";

const ALL: readonly Section[] = [
  ...[riskMatrix, priorityOrder, sumOfWeights],
  ...[accessSection, sharedSplit, opportunities, choiceSection],
  ...[pert, labourSum, taxRounding, splitMoney],
  ...[cpm, benchmarks, smallPlans, leadTime, stranding],
  ...[guard, trend, halfLife, several],
];

export const SECTIONS: ReadonlyMap<string, Section> = new Map(ALL.map((section) => [section.name, section]));
