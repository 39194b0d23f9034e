/**
 * A reading being entered: what is typed, in which unit and with which gauge, what stands already, and keeping it.
 * Outside the usual window it asks again before it keeps.
 */
import { useEffect, useState } from "preact/hooks";
import type { JudgedReading } from "../../core/assess/contract.js";
import type { ScaleInput } from "../../core/report/scale-terms.js";
import { type GaugeUsed, keyText, type ReplyValue } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import {
  type Entering,
  gaugeUsed,
  lastReading,
  type ReadingField,
  readEntry,
  readingScale,
  shotsOf,
  type Typed,
  type Verdict,
  verdictOf,
  withoutReading,
  withReading,
} from "../state/reading-view.js";
import type { ParamsOf } from "../state/routes.js";
import { keyOf, replyAt } from "../state/standing.js";
import { reply } from "../state/visit-acts.js";
import type { OnDesk } from "./on-visit.js";

type ReadingValue = Extract<ReplyValue, { type: "reading" }>;

export interface ReadingState {
  readonly entering: Entering;
  readonly entry: Typed;
  /** What stands. */
  readonly value: ReadingValue | undefined;
  readonly shots: number;
  readonly scale: ScaleInput;
  readonly verdict: Verdict | undefined;
  /** Lies outside the usual window and was not said to be so yet. */
  readonly asking: boolean;
  readonly closed: boolean;
  readonly type: (text: string) => void;
  readonly setUnit: (unit: string) => void;
  readonly setGauge: (gauge: GaugeUsed) => void;
  readonly keep: () => void;
  /** A result beside a number, or seconds of a stopwatch, as it is kept. */
  readonly keepText: (text: string, unit: string) => void;
  readonly takeBack: (index: number) => void;
}

/** Felt where a reading is too close to call. */
const TWO_TICKS = [12, 60, 12];

const judgedAt = (on: OnDesk, params: ParamsOf<"reading">): JudgedReading | undefined =>
  on.assessment.readings.find(
    (one) => one.point === params.point && one.place === params.place && one.field === params.field,
  );

export function useReading(on: OnDesk, params: ParamsOf<"reading">, field: ReadingField): ReadingState {
  const { journal, settings, around } = useApp();
  const kept = replyAt(on.visit.replies, params, params.field);
  const value = kept?.type === "reading" ? kept : undefined;
  const [typed, setTyped] = useState("");
  const [unit, setUnit] = useState(value?.unit ?? field.unit);
  const [own, setGauge] = useState<GaugeUsed>();
  const [isSure, setSure] = useState(false);

  const tool = on.known.gauges.get(on.known.points.get(params.point)?.point.tool ?? "");
  const gauge = own ?? (value?.gauge && value.unit === unit ? value.gauge : gaugeUsed(field, tool, unit));
  const entering: Entering = { typed, unit, comma: settings.value.comma, ...(gauge ? { gauge } : {}) };
  const entry = readEntry(field, entering);
  const judged = judgedAt(on, params);
  const last = lastReading(field, on.desk.earlier.value, keyText(keyOf(params, params.field)), unit);
  const scale = readingScale(field, entering, value, judged, last);
  const verdict = scale.limitsShown ? verdictOf(field, judged, entering) : undefined;
  const closed = on.visit.closed !== undefined;
  const isClose = verdict?.tooClose === true;
  useEffect(() => {
    if (isClose) around.vibrate(TWO_TICKS);
  }, [isClose, around]);

  const store = (next: ReadingValue | undefined): void =>
    void reply(journal, on.stream, keyOf(params, params.field), next ?? null);
  const type = (text: string): void => {
    setTyped(text);
    setSure(false);
  };
  return {
    entering,
    entry,
    value,
    shots: shotsOf(field),
    scale,
    verdict,
    asking: isSure && entry.is === "reading" && entry.unusual,
    closed,
    type,
    setUnit,
    setGauge,
    keep: () => {
      if (entry.is !== "reading" || closed) return;
      if (entry.unusual && !isSure) return setSure(true);
      store(withReading(field, value, entry.reading, gauge));
      type("");
    },
    keepText: (text, of) =>
      store(
        withReading(
          field,
          value,
          { text, unit: of, value: Number(text), canonical: Number(text), decimals: null },
          gauge,
        ),
      ),
    takeBack: (index) => {
      if (value && !closed) store(withoutReading(value, index));
    },
  };
}
