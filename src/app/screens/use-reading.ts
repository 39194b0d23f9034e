/**
 * A reading being entered: what is typed, in which unit and with which gauge, what stands already, and keeping it.
 * Outside the usual window it asks again before it keeps.
 */
import { useEffect, useState } from "preact/hooks";
import type { JudgedReading } from "../../core/assess/contract.js";
import type { ScaleInput } from "../../core/report/scale-terms.js";
import { type GaugeUsed, keyText, type ReplyValue } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import { gaugeAs } from "../state/gauges-view.js";
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
  withReplaced,
} from "../state/reading-view.js";
import { reply } from "../state/reply-acts.js";
import type { ParamsOf } from "../state/routes.js";
import { keyOf, replyAt } from "../state/standing.js";
import { figure } from "../texts/reading.js";
import { unitShown } from "../texts/units.js";
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
  /** Keeps what is typed; outside the usual window it asks first and keeps only by {@link ReadingState.accept}. */
  readonly keep: () => void;
  /** It is what was typed, however unusual. */
  readonly accept: () => void;
  /** Back to typing. */
  readonly change: () => void;
  /** The unit was switched under what is typed. */
  readonly relabelled: boolean;
  /** The kept reading that what is typed will take the place of. */
  readonly replaces: number | undefined;
  /** The reading replaced last, as it was. */
  readonly was: { readonly index: number; readonly text: string } | undefined;
  /** Types a kept reading again, to be kept in its place. */
  readonly changeKept: (index: number) => void;
  /** A result beside a number, or seconds of a stopwatch, as it is kept. */
  readonly keepText: (text: string, unit: string) => void;
  readonly takeBack: (index: number) => void;
}

/** Unit and gauge last chosen for a point in a visit: the next wheel is measured with the same. Lost with the page. */
interface LastUsed {
  readonly unit?: string;
  readonly gauge?: GaugeUsed;
}
const lastUsed = new Map<string, LastUsed>();

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
  const usedKey = `${on.stream} ${params.point} ${params.field}`;
  const used = lastUsed.get(usedKey);
  const [unit, setUnit] = useState(value?.unit ?? used?.unit ?? field.unit);
  const [own, setOwn] = useState<GaugeUsed | undefined>(value || used?.unit !== unit ? undefined : used?.gauge);
  const setGauge = (next: GaugeUsed): void => {
    lastUsed.set(usedKey, { unit, gauge: next });
    setOwn(next);
  };
  const [isAsked, setAsked] = useState(false);
  const [relabelled, setRelabelled] = useState(false);
  const [changing, setChanging] = useState<number>();
  const [was, setWas] = useState<ReadingState["was"]>();

  const house = journal.house().value;
  const toolId = on.known.points.get(params.point)?.point.tool ?? "";
  const tool = (house.is === "open" ? gaugeAs(house.state, toolId) : undefined) ?? on.known.gauges.get(toolId);
  const gauge = own ?? (value?.gauge && value.unit === unit ? value.gauge : gaugeUsed(field, tool, unit));
  const entering: Entering = { typed, unit, comma: settings.value.comma, ...(gauge ? { gauge } : {}) };
  const entry = readEntry(field, entering);
  const judged = judgedAt(on, params);
  const last = lastReading(field, on.desk.earlier.value, keyText(keyOf(params, params.field)), unit);
  const told = readingScale(field, entering, value, judged, last);
  const said = told.limitsShown ? verdictOf(field, judged, entering) : undefined;
  // On a quiet screen what was measured stands there, not what it is measured against: but for measuring again.
  const scale = on.quiet ? { ...told, edges: [], limitsShown: false } : told;
  const verdict = on.quiet && said?.tooClose !== true ? undefined : said;
  const closed = on.visit.closed !== undefined;
  const isClose = verdict?.tooClose === true;
  useEffect(() => {
    if (isClose) around.vibrate(TWO_TICKS);
  }, [isClose, around]);

  const store = (next: ReadingValue | undefined): void =>
    void reply(journal, on.stream, keyOf(params, params.field), next ?? null);
  const type = (text: string): void => {
    setTyped(text);
    setAsked(false);
    if (text === "") {
      setRelabelled(false);
      setChanging(undefined);
    }
  };
  const shots = shotsOf(field);
  const chosen = value && changing !== undefined && changing < value.values.length ? changing : undefined;
  // A point that asks for one reading takes the new one instead of the old.
  const replaces = chosen ?? (value && shots === 1 && typed !== "" ? 0 : undefined);
  const accept = (): void => {
    if (entry.is !== "reading" || closed) return;
    const { reading } = entry;
    const before = replaces === undefined ? undefined : value?.values[replaces];
    setWas(
      value && replaces !== undefined && before !== undefined
        ? { index: replaces, text: `${figure(before)} ${unitShown(value.unit)}` }
        : undefined,
    );
    store(
      value && replaces !== undefined
        ? withReplaced(field, value, replaces, reading, gauge)
        : withReading(field, value, reading, gauge),
    );
    type("");
  };
  return {
    entering,
    entry,
    value,
    shots,
    scale,
    verdict,
    asking: isAsked && entry.is === "reading" && entry.unusual,
    closed,
    type,
    setUnit: (next) => {
      setRelabelled(typed !== "" && next !== unit);
      setAsked(false);
      lastUsed.set(usedKey, { unit: next });
      setOwn(undefined);
      setUnit(next);
    },
    setGauge,
    keep: () => {
      if (entry.is !== "reading" || closed) return;
      if (entry.unusual) setAsked(true);
      else accept();
    },
    accept,
    change: () => setAsked(false),
    relabelled,
    replaces,
    was,
    changeKept: (index) => {
      const text = value?.values[index];
      if (!value || text === undefined || closed) return;
      setUnit(value.unit);
      type(settings.value.comma ? text.replace(".", ",") : text);
      setChanging(index);
    },
    keepText: (text, of) => {
      if (closed) return;
      store(
        withReading(
          field,
          value,
          { text, unit: of, value: Number(text), canonical: Number(text), decimals: null },
          gauge,
        ),
      );
    },
    takeBack: (index) => {
      if (!value || closed) return;
      setWas(undefined);
      store(withoutReading(value, index));
    },
  };
}
