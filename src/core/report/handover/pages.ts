/** The whole hand-over in words, in the order its reader needs it. Knows which section comes where, and no section's inside. */
import { cleaned } from "./clean.js";
import { momentText } from "./figures.js";
import type { HandoverModel } from "./model.js";
import type { Block, HandoverPages } from "./page.js";
import { donePages } from "./pages-done.js";
import { findingPages } from "./pages-findings.js";
import { firstPage } from "./pages-first.js";
import {
  cautionPages,
  editionPages,
  gatePages,
  isNotPages,
  keyPages,
  readingPages,
  signPages,
  trendPages,
} from "./pages-rest.js";
import { unseenPages } from "./pages-unseen.js";
import { afterPages, buyingPages, datePages, declinedPages, workPages } from "./pages-work.js";
import { type HandoverWords, say } from "./words.js";

/** Cautions stand on the first page; a buyer's figures and an owner's days come before the because of every finding. */
export function handoverPages(given: HandoverModel, words: HandoverWords): HandoverPages {
  const model = cleaned(given);
  const told = {
    car: model.car.name,
    day: momentText(words, model.visit.at),
    made: momentText(words, model.madeAt),
  };
  // What a buyer came for is the price.
  const buying = model.for === "buyer" ? buyingPages(model, words) : [];
  const first = [...firstPage(model, words), ...cautionPages(model, words), ...buying];
  return {
    lang: words.lang,
    title: `${say(words, `title.${model.for}`)}: ${model.car.name}`,
    subtitle: say(words, "foot", told),
    foot: say(words, "foot", told),
    blocks: [...first, ...bodyFor(model, words)],
    first: first.length,
  };
}

function bodyFor(model: HandoverModel, words: HandoverWords): readonly Block[] {
  const ending = [...isNotPages(words), ...editionPages(model, words), ...keyPages(words)];
  const findings = [...findingPages(model, words), ...unseenPages(model, words)];
  const done = model.for === "owner" ? [] : donePages(model, words);
  const work = [...done, ...workPages(model, words), ...declinedPages(model, words), ...afterPages(model, words)];
  const readings = [...readingPages(model, words), ...trendPages(model, words)];
  const dates = datePages(model, words);
  const gates = gatePages(model, words);
  if (model.for === "buyer") return [...done, ...findings, ...gates, ...readings, ...dates, ...ending];
  const signed = [...ending, ...signPages(model, words)];
  if (model.for === "owner") return [...dates, ...findings, ...work, ...gates, ...readings, ...signed];
  return [...findings, ...work, ...gates, ...readings, ...dates, ...signed];
}
