/** What one reply says in one slot. Knows gauges and units; no place but the slot's, no rule. */
import { NOT_APPLICABLE, type Outcome } from "../expr/run.js";
import type { Point } from "../sheet/run.js";
import {
  type GaugeUsed,
  keyText,
  type NonAnswer,
  type Problem,
  problem,
  type ReplyKey,
  type ReplyValue,
} from "../terms/index.js";
import { convertStep, isQuantity, type Quantity, readTyped, toCanonicalStep, unitOf } from "../units/index.js";
import type { StandingReply } from "./contract.js";
import type { Model } from "./model.js";
import type { SlotNode } from "./nodes.js";
import type { Shots } from "./reading.js";

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
const NONE: readonly Problem[] = [];

/** What one reply says in one slot. */
export function understand(model: Model, slot: SlotNode, reply: StandingReply): Standing {
  const { value } = reply;
  const { field, kind } = slot.field;
  if (value.type === "non-answer")
    return {
      ...plainly(reply, value.nonAnswer === "not-fitted" ? NOT_APPLICABLE : slot.unknown),
      nonAnswer: value.nonAnswer,
    };
  if (kind === "words" && value.type === "words") return plainly(reply, value.words);
  if (
    (kind === "word" || kind === "reading") &&
    value.type === "words" &&
    value.words.length === 1 &&
    value.words[0] !== undefined
  )
    return plainly(reply, value.words[0]);
  if (kind === "reading" && value.type === "reading" && "quantity" in field && isQuantity(field.quantity))
    return understandReading(model, slot, reply, value, field.quantity);
  if (kind === "count" && value.type === "count")
    return Number.isFinite(value.count) ? plainly(reply, value.count) : refused(slot, reply, "assess.not-finite");
  if (kind === "yes" && value.type === "yes") return plainly(reply, value.yes);
  if (kind === "date-code" && value.type === "date-code") return plainly(reply, value.text);
  return refused(slot, reply, "assess.reply-kind", { expected: kind });
}

function plainly(reply: StandingReply, outcome: Outcome): Standing {
  return {
    id: reply.id,
    key: reply.key,
    value: reply.value,
    nonAnswer: undefined,
    outcome,
    shots: undefined,
    problems: NONE,
    from: reply,
  };
}

function refused(slot: SlotNode, reply: StandingReply, code: string, params: Problem["params"] = {}): Standing {
  return {
    ...plainly(reply, slot.unknown),
    problems: [problem(code, {}, { reply: reply.id, key: keyText(reply.key), ...params })],
  };
}

function understandReading(
  model: Model,
  slot: SlotNode,
  reply: StandingReply,
  value: ReplyValue & { type: "reading" },
  quantity: Quantity,
): Standing {
  const { field } = slot.field;
  const results = "results" in field ? (field.results ?? []) : [];
  const word = value.values.find((v) => results.includes(v));
  if (word !== undefined) return plainly(reply, word);
  if (unitOf(value.unit, quantity) === undefined)
    return refused(slot, reply, "assess.unit-unknown", { unit: value.unit, quantity });
  const values: number[] = [];
  let step = Number.POSITIVE_INFINITY;
  for (const typed of value.values) {
    const read = readTyped(typed, { quantity, unit: value.unit });
    if (!read.ok)
      return refused(slot, reply, "assess.reading-not-read", {
        typed,
        unit: value.unit,
        because: read.problems[0]?.code ?? "",
      });
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
function gaugeOf(model: Model, point: Point, quantity: Quantity, unit: string): GaugeUsed | undefined {
  const gauge = model.gauges.get(point.tool ?? "");
  if (gauge === undefined || gauge.quantity !== quantity) return undefined;
  const inUnit = (step: number) => convertStep(step, gauge.unit, unit, quantity);
  return { id: gauge.id, resolution: inUnit(gauge.resolution), error: inUnit(gauge.error) };
}
