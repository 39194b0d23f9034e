/** The verb `calc`: one trade function worked out, or the list of them all. Knows no other verb. */
import { rangeText } from "../core/terms/author.js";
import {
  type Argument,
  isList,
  isWordArgument,
  reckon,
  SUBJECTS,
  type TradeFunction,
  tellSource,
  tellTrade,
} from "../core/trade/index.js";
import { canonicalUnit } from "../core/units/index.js";
import type { Terminal } from "./sheets.js";

const USE = `use: calc 'NAME(ARGUMENT, …)'   for example calc 'brake_imbalance(2000 N, 1500 N)'
     calc --list              every function with its arguments, units, result and source`;

/** The unit of what a function takes or gives; nothing for words and yes or no. */
const unitOf = (kind: TradeFunction["gives"]): string | null =>
  kind === "number" || kind === "word" || kind === "yes" ? null : canonicalUnit(kind);

const argumentTold = (argument: Argument) => ({
  name: argument.name,
  says: argument.says,
  kind: argument.kind,
  ...(isWordArgument(argument)
    ? { words: argument.words ?? null }
    : {
        unit: unitOf(argument.kind),
        range: rangeText(argument),
        ...(isList(argument) ? { list: true, atLeast: argument.atLeast } : {}),
      }),
});

const listed = (subject: string, fn: TradeFunction) => ({
  name: fn.name,
  subject,
  says: fn.says,
  arguments: fn.arguments.map(argumentTold),
  gives: fn.gives,
  unit: unitOf(fn.gives),
  ...(fn.words === undefined ? {} : { words: fn.words }),
  formula: fn.formula,
  source: tellSource(fn.source),
  basis: fn.source.basis,
});

/** Prints `{value, unit, source}` or `{problem}`. Gives 0, 1 when the reckoning is refused, 2 when called wrongly. */
export async function calcVerb(args: readonly string[], { out, err }: Terminal): Promise<0 | 1 | 2> {
  const [text, ...rest] = args;
  if (text === undefined || rest.length > 0) {
    err(USE);
    return 2;
  }
  if (text === "--list") {
    const all = Object.entries(SUBJECTS).flatMap(([subject, functions]) => functions.map((fn) => listed(subject, fn)));
    out(JSON.stringify(all, null, 2));
    return 0;
  }
  const reckoned = reckon(text);
  if (!reckoned.ok) {
    const told = reckoned.problems.map(tellTrade);
    for (const one of told) err(one);
    out(JSON.stringify({ problem: told.join(" ") }, null, 2));
    return 1;
  }
  const { value, of } = reckoned.value;
  out(JSON.stringify({ value, unit: unitOf(of.gives), source: tellSource(of.source) }, null, 2));
  return 0;
}
