/**
 * What is given for one assessment, laid into the slots of a site: replies that stand, car facts, the limits book.
 * Understands readings as typed; concludes nothing. What it cannot place is told, never dropped in silence.
 */
import { NOT_APPLICABLE, type Outcome } from "../expr/run.js";
import type { CarLimit, Point } from "../sheet/run.js";
import { GRADES, type GaugeUsed, type Grade, keyText, levelOf, type NonAnswer, type Problem, problem, type ReplyKey, type ReplyValue } from "../terms/index.js";
import { convertStep, isQuantity, type Quantity, readTyped, toCanonical, toCanonicalStep, unitOf } from "../units/index.js";
import { isBeyond } from "./band.js";
import type { AssessInput, FactValue, StandingReply } from "./contract.js";
import { type BookFigure, type LimitInfo, type Model, plainId } from "./model.js";
import type { Shots } from "./reading.js";
import type { FactNode, Site, SlotNode } from "./site.js";

/** One thing that stands in a slot: an answer or a non-answer. Several are alternatives. */
export interface Standing {
  readonly id: string;
  readonly key: ReplyKey;
  /** With the gauge filled in where none was named. */
  readonly value: ReplyValue;
  readonly nonAnswer: NonAnswer | undefined;
  /** What a condition hears; readings go by their shots. */
  readonly outcome: Outcome;
  readonly shots: Shots | undefined;
  readonly problems: readonly Problem[];
  readonly from: StandingReply;
}
/** A car fact that stands. */
export interface StandingFact {
  readonly name: string;
  readonly value: FactValue;
  readonly outcome: Outcome;
}

export interface Given {
  /** By node id of slots. */
  readonly replies: readonly (readonly Standing[] | undefined)[];
  /** By node id of facts. */
  readonly facts: readonly (readonly StandingFact[] | undefined)[];
  /** By id of the default limit. */
  readonly book: ReadonlyMap<string, readonly BookFigure[]>;
  readonly problems: readonly Problem[];
}

/** Lays the input into the site. `before`: replies already understood are not read again. */
export function layOut(site: Site, input: AssessInput, before?: Given): Given {
  const problems: Problem[] = [];
  return {
    replies: layReplies(site, input.replies, problems, before),
    facts: layFacts(site, input, problems),
    book: layBook(site.model, input.car.limits, problems),
    problems,
  };
}

function layReplies(site: Site, replies: readonly StandingReply[], problems: Problem[], before?: Given): Given["replies"] {
  const understood = new Map<StandingReply, Standing>();
  if (before !== undefined) for (const all of before.replies) if (all !== undefined) for (const s of all) understood.set(s.from, s);
  const out = new Array<Standing[] | undefined>(site.leaves).fill(undefined);
  const several = new Set<number>();
  for (const reply of replies) {
    const { key, value } = reply;
    const point = site.model.pointById.get(key.point) ?? site.model.pointById.get(plainId(key.point));
    const spot = point === undefined ? undefined : site.spotsOf(point).get(key.place);
    if (point === undefined || spot === undefined) {
      problems.push(problem("assess.reply-nowhere", {}, { reply: reply.id, key: keyText(key), what: point === undefined ? "point" : "place" }));
      continue;
    }
    let laid = false;
    for (const slot of spot.slots) {
      if (value.type !== "non-answer" && slot.field.name !== key.field) continue;
      laid = true;
      const standing = (spot.slots.length === 1 ? understood.get(reply) : undefined) ?? understand(site.model, slot, reply);
      if (standing.problems.length > 0) problems.push(...standing.problems);
      const row = out[slot.id];
      if (row === undefined) out[slot.id] = [standing];
      else {
        row.push(standing);
        several.add(slot.id);
      }
    }
    if (!laid) problems.push(problem("assess.reply-nowhere", {}, { reply: reply.id, key: keyText(key), what: "field" }));
  }
  const settled: (readonly Standing[] | undefined)[] = out;
  for (const id of several) settled[id] = alternatives(out[id] ?? []);
  return settled;
}

/**
 * Equal values are one. A non-answer in one car state gives way to an answer in another: there it could be looked
 * at. Sorted, so that the order replies arrive in changes nothing.
 */
function alternatives(row: readonly Standing[]): readonly Standing[] {
  const answered = row.some((s) => s.nonAnswer === undefined);
  const answeredStates = new Set(row.filter((s) => s.nonAnswer === undefined).map((s) => s.key.state));
  const kept = row.filter((s) => s.nonAnswer === undefined || !answered || answeredStates.has(s.key.state));
  const sorted = [...kept].sort((a, b) => compareText(a.key.state, b.key.state) || compareText(a.id, b.id));
  const seen = new Set<string>();
  return sorted.filter((s) => {
    const text = JSON.stringify(s.value);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const NONE: readonly Problem[] = [];

/** What one reply says in one slot. */
function understand(model: Model, slot: SlotNode, reply: StandingReply): Standing {
  const { value } = reply;
  const { field, kind } = slot.field;
  if (value.type === "non-answer")
    return { ...plainly(reply, value.nonAnswer === "not-fitted" ? NOT_APPLICABLE : slot.unknown), nonAnswer: value.nonAnswer };
  if (kind === "words" && value.type === "words") return plainly(reply, value.words);
  if ((kind === "word" || kind === "reading") && value.type === "words" && value.words.length === 1 && value.words[0] !== undefined)
    return plainly(reply, value.words[0]);
  if (kind === "reading" && value.type === "reading" && "quantity" in field && isQuantity(field.quantity))
    return understandReading(model, slot, reply, value, field.quantity);
  if (kind === "count" && value.type === "count") return Number.isFinite(value.count) ? plainly(reply, value.count) : refused(slot, reply, "assess.not-finite");
  if (kind === "yes" && value.type === "yes") return plainly(reply, value.yes);
  if (kind === "date-code" && value.type === "date-code") return plainly(reply, value.text);
  return refused(slot, reply, "assess.reply-kind", { expected: kind });
}

function plainly(reply: StandingReply, outcome: Outcome): Standing {
  return { id: reply.id, key: reply.key, value: reply.value, nonAnswer: undefined, outcome, shots: undefined, problems: NONE, from: reply };
}

function refused(slot: SlotNode, reply: StandingReply, code: string, params: Problem["params"] = {}): Standing {
  return { ...plainly(reply, slot.unknown), problems: [problem(code, {}, { reply: reply.id, key: keyText(reply.key), ...params })] };
}

function understandReading(model: Model, slot: SlotNode, reply: StandingReply, value: ReplyValue & { type: "reading" }, quantity: Quantity): Standing {
  const { field } = slot.field;
  const results = "results" in field ? (field.results ?? []) : [];
  const word = value.values.find((v) => results.includes(v));
  if (word !== undefined) return plainly(reply, word);
  if (unitOf(value.unit, quantity) === undefined) return refused(slot, reply, "assess.unit-unknown", { unit: value.unit, quantity });
  const values: number[] = [];
  let step = Number.POSITIVE_INFINITY;
  for (const typed of value.values) {
    const read = readTyped(typed, { quantity, unit: value.unit });
    if (!read.ok) return refused(slot, reply, "assess.reading-not-read", { typed, unit: value.unit, because: read.problems[0]?.code ?? "" });
    if (!Number.isFinite(read.value.canonical)) return refused(slot, reply, "assess.not-finite", { typed });
    values.push(read.value.canonical);
    step = Math.min(step, toCanonicalStep(typedStep(read.value.text, read.value.decimals), read.value.unit, quantity));
  }
  if (values.length === 0) return refused(slot, reply, "assess.no-values");
  const gauge = value.gauge ?? gaugeOf(model, slot.spot.point.point, quantity, value.unit);
  const shots: Shots = {
    values,
    resolution: gauge === undefined ? step : toCanonicalStep(gauge.resolution, value.unit, quantity),
    error: gauge === undefined ? 0 : toCanonicalStep(gauge.error, value.unit, quantity),
    setUp: slot.field.setUp,
  };
  const shown = gauge === undefined || value.gauge !== undefined ? value : { ...value, gauge };
  return { ...plainly(reply, slot.unknown), value: shown, shots };
}

/** Without a gauge the last figure typed is the display step: 0.22 was read to 0.01, 3/32 to 1/32. */
function typedStep(text: string, decimals: number | null): number {
  if (decimals !== null) return 10 ** -decimals;
  const below = Number(text.split("/")[1]);
  return below > 0 ? 1 / below : 0;
}

/** The tool the point declares, if it measures this quantity; step and error in the unit of the reading. */
export function gaugeOf(model: Model, point: Point, quantity: Quantity, unit: string): GaugeUsed | undefined {
  const gauge = model.gauges.get(point.tool ?? "");
  if (gauge === undefined || gauge.quantity !== quantity) return undefined;
  const inUnit = (step: number) => convertStep(step, gauge.unit, unit, quantity);
  return { id: gauge.id, resolution: inUnit(gauge.resolution), error: inUnit(gauge.error) };
}

function layFacts(site: Site, input: AssessInput, problems: Problem[]): Given["facts"] {
  const out: (StandingFact[] | undefined)[] = [];
  const declared = new Map(site.model.common.facts.map((f) => [plainId(f.id), f]));
  const put = (node: FactNode, value: FactValue) => {
    const fact = declared.get(node.name);
    const outcome = factOutcome(value, fact);
    if (outcome === undefined) problems.push(problem("assess.fact-kind", {}, { fact: node.name, value: String(value) }));
    const row = out[node.id] ?? [];
    if (!row.some((s) => s.value === value)) row.push({ name: node.name, value, outcome: outcome ?? node.unknown });
    out[node.id] = row;
  };
  for (const [name, value] of Object.entries(input.car.facts)) put(site.factFor(name), value);
  for (const [name, values] of Object.entries(input.car.otherFacts ?? {})) for (const v of values) put(site.factFor(name), v);
  const { country, firstUsed, seat } = input.car;
  const year = firstUsed === undefined ? Number.NaN : Number(firstUsed.slice(0, 4));
  if (country !== undefined) putDefault("country", knownCountry(country.toLowerCase()));
  if (seat !== undefined) putDefault("seat", seat);
  if (Number.isInteger(year)) putDefault("first_used", year);
  return out.map((row) => row?.sort((a, b) => compareText(String(a.value), String(b.value))));

  /** Countries the sheets know by name; the rest are `other` where that is a word. */
  function knownCountry(country: string): string {
    const words = declared.get("country")?.words ?? [];
    return words.includes("other") && !words.includes(country) ? "other" : country;
  }
  function putDefault(name: string, value: FactValue) {
    const node = site.factFor(name);
    if (out[node.id] === undefined) put(node, value);
  }
}

type FactDeclaration = Model["common"]["facts"][number];
/** What a condition hears of a fact; undefined when the value does not fit what is declared. */
function factOutcome(value: FactValue, fact: FactDeclaration | undefined): Outcome | undefined {
  if (fact === undefined) return value;
  if (fact.kind === "word") return typeof value === "string" && (fact.words ?? []).includes(value) ? value : undefined;
  if (fact.kind === "yes") return typeof value === "boolean" ? value : undefined;
  if (typeof value === "boolean") return undefined;
  const { quantity, unit } = fact;
  if (quantity !== undefined && unit !== undefined && isQuantity(quantity)) {
    if (typeof value === "number") return Number.isFinite(value) ? toCanonical(value, unit, quantity) : undefined;
    const read = readTyped(value, { quantity, unit });
    return read.ok ? read.value.canonical : undefined;
  }
  const number = Number(value);
  return Number.isFinite(number) && value !== "" ? number : undefined;
}

function layBook(model: Model, figures: readonly CarLimit[], problems: Problem[]): Given["book"] {
  const book = new Map<string, BookFigure[]>();
  for (const figure of figures) {
    const over = model.limitById.get(plainId(figure.limit));
    if (over === undefined) {
      problems.push(problem("assess.limit-unknown", {}, { limit: figure.limit }));
      continue;
    }
    const bands = figureBands(figure, over, problems);
    if (bands === undefined) continue;
    const row = book.get(over.limit.id) ?? [];
    row.push({ figure, over, bands });
    book.set(over.limit.id, row);
  }
  return book;
}

/** The figure's own edges; of the default's only the severer ones that lie beyond them stay. */
function figureBands(figure: CarLimit, over: LimitInfo, problems: Problem[]): BookFigure["bands"] | undefined {
  const { quantity } = over.limit;
  const typed = figure.bands ?? (figure.value === undefined ? {} : { [figure.grade ?? "major"]: figure.value });
  const bands: Partial<Record<Grade, number>> = {};
  for (const grade of GRADES) {
    const text = typed[grade];
    if (text === undefined) continue;
    const read =
      isQuantity(quantity) && unitOf(figure.unit, quantity) !== undefined ? readTyped(text, { quantity, unit: figure.unit }) : undefined;
    if (read === undefined || !read.ok) {
      problems.push(problem("assess.figure-not-read", {}, { limit: figure.limit, typed: text, unit: figure.unit }));
      return undefined;
    }
    bands[grade] = read.value.canonical;
  }
  const own = GRADES.filter((g) => bands[g] !== undefined);
  const severest = own[own.length - 1];
  const edge = severest === undefined ? undefined : bands[severest];
  if (severest === undefined || edge === undefined) {
    problems.push(problem("assess.figure-empty", {}, { limit: figure.limit }));
    return undefined;
  }
  for (const grade of GRADES) {
    const stays = over.bands[grade];
    if (levelOf(grade) > levelOf(severest) && stays !== undefined && isBeyond(edge, stays, over.direction)) bands[grade] = stays;
  }
  return bands;
}
