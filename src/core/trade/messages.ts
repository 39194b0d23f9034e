/** Texts for what trade functions refuse, by code; {name} is filled from the problem's params. English. */
import type { Problem } from "../terms/index.js";
import { UNIT_MESSAGES } from "../units/index.js";
import type { Source } from "./contract.js";

export const TRADE_MESSAGES: Readonly<Record<string, string>> = {
  "trade.unknown": "There is no function “{name}”. Nearest: {expected}. `calc --list` names them all.",
  "trade.syntax": "“{typed}” can't be read from “{rest}” on. Write name(argument, …), for example {example}.",
  "trade.arguments": "{of} takes {expected}; {given} given.",
  "trade.kind": "{of}: {argument} must be a {expected}.",
  "trade.range": "{of}: {argument} is {found}; it must be {range}.",
  "trade.whole": "{of}: {argument} is {found}; it must be a whole number.",
  "trade.too-few": "{of}: {argument} holds {found}; at least {expected} are needed.",
  "trade.word": "{of}: {argument} is “{found}”; it must be one of {expected}.",
  "trade.no-answer": "{of}: there is no finite answer to these figures.",
  "trade.over-argument": "{of}: {argument} is too large beside the others; at most {most}.",
  "trade.under-argument": "{of}: {argument} is too small beside the others; at least {least}.",
  "trade.wall-too-thick": "{of}: {argument} leaves no hole; it must be under {most}.",
  "trade.wall-gone": "{of}: {argument} leaves no wall; it must be under {most}.",
  "trade.no-loss": "{of}: no loss was measured, so there is no rate and no end.",
  "trade.both-zero": "{of}: both sides are zero, so there is no imbalance to tell.",
  "trade.no-drain": "{of}: without a drain the battery lasts.",
  "trade.no-shim": "{of}: no shim gives this clearance ({argument}).",
  "trade.no-spacer": "{of}: every one of the {argument} stands too high.",
  "trade.stands-too-high": "{of}: it stands too high even without a spacer ({argument}).",
  "trade.gears-too-large": "{of}: these teeth do not fit the {argument} distance; at least {least} is needed.",
  "trade.no-mate": "{of}: no whole number of teeth fits the {argument} distance; {found} would.",
  "trade.date-length": "{of}: “{found}” is no date code; the last three or four figures are wanted.",
  "trade.date-week": "{of}: “{found}” has a week that no year has; 01 to 53.",
  "trade.date-future": "{of}: “{found}” lies in the future; four figures count from the year 2000.",
  "trade.date-decade": "{of}: “{found}” has three figures and names no decade: {years}. Ask for the least age instead.",
  "trade.same-time": "{of}: all readings are from the same {argument}; they need time or distance between them.",
  "trade.no-trend": "{of}: wear can't be told from the {argument} yet.",
  "trade.leads-away": "{of}: the readings lead away from the {argument}; it is not reached this way.",
  "trade.unequal-lists": "{of}: {found} {argument} for {expected} times; each time needs one.",
};

/** A problem of this folder, or of a figure that could not be read, as one sentence. */
export function tellTrade({ code, params }: Problem): string {
  const text = TRADE_MESSAGES[code] ?? UNIT_MESSAGES[code] ?? code;
  const filled = text.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = params[name];
    return Array.isArray(value) ? value.join(", ") : String(value ?? "");
  });
  const argument = params["argument"];
  return code.startsWith("units.") && argument !== undefined ? `${params["of"]}: ${argument}: ${filled}` : filled;
}

const FROM: Readonly<Record<Source["basis"], string>> = {
  published: "published",
  practice: "common practice, no source",
  memory: "from memory",
  arithmetic: "arithmetic",
};

/** A source in one line: document and clause, or its basis, and how far it was seen. */
export const tellSource = ({ basis, document, clause, note }: Source): string =>
  [document === undefined ? FROM[basis] : [document, clause].filter(Boolean).join(", "), note]
    .filter((part) => part !== undefined)
    .join("; ");
