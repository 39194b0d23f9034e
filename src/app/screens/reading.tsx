/** A reading: big figure, keypad, unit and gauge; limits and the last value only once it is entered. */
import { useState } from "preact/hooks";
import { type GaugeUsed, keyText, type ReplyValue } from "../../core/terms/index.js";
import { convert, isQuantity } from "../../core/units/index.js";
import { Keypad } from "../parts/keypad.js";
import { Notice } from "../parts/notice.js";
import { Pool } from "../parts/pool.js";
import { GaugeLine, ReadingEntry, ReadingList } from "../parts/reading-entry.js";
import { ReadingScale } from "../parts/reading-scale.js";
import { Stopwatch } from "../parts/stopwatch.js";
import { UnitSwitch } from "../parts/switch.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { capital, fieldName, placeName } from "../state/knowledge.js";
import {
  type Entering,
  gaugeUsed,
  lastReading,
  type ReadingField,
  readEntry,
  readingList,
  readingScale,
  shotsOf,
  unitsOffered,
  verdictOf,
  withoutReading,
  withReading,
} from "../state/reading-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { keyOf, replyAt } from "../state/standing.js";
import { unitShown } from "../state/telling.js";
import { reply } from "../state/visit-acts.js";
import { figure, rounded, t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { MissingScreen, Top } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { GaugeSheet, SourceSheet } from "./reading-sheets.js";

type ReadingValue = Extract<ReplyValue, { type: "reading" }>;
interface Here {
  readonly on: OnDesk;
  readonly params: ParamsOf<"reading">;
  readonly field: ReadingField;
}

function ReadingBody({ on, params, field }: Here) {
  const { journal, settings, router, around } = useApp();
  const [typed, setTyped] = useState("");
  const known = on.known.points.get(params.point);
  const kept = replyAt(on.visit.replies, params, params.field);
  const value: ReadingValue | undefined = kept?.type === "reading" ? kept : undefined;
  const [unit, setUnit] = useState(value?.unit ?? field.unit);
  const [own, setOwn] = useState<GaugeUsed>();
  const [sure, setSure] = useState(false);
  const [over, setOver] = useState<"gauge" | "source">();
  const tool = gaugeUsed(field, on.known.gauges.get(known?.point.tool ?? ""), unit);
  const gauge = own ?? (value?.gauge && value.unit === unit ? value.gauge : tool);
  const comma = settings.value.comma;
  const entering: Entering = { typed, unit, comma, ...(gauge ? { gauge } : {}) };
  const entry = readEntry(field, entering);
  const shots = shotsOf(field);
  const count = value?.values.length ?? 0;
  const judged = on.assessment.readings.find(
    (one) => one.point === params.point && one.place === params.place && one.field === params.field,
  );
  const last = lastReading(field, on.desk.earlier.value, keyText(keyOf(params, params.field)), unit);
  const scale = readingScale(field, entering, value, judged, last);
  const verdict = scale.limitsShown ? verdictOf(field, judged, entering) : undefined;
  const closed = on.visit.closed !== undefined;

  const store = (next: ReadingValue | undefined): void =>
    void reply(journal, on.stream, keyOf(params, params.field), next ?? null);
  const keep = (): void => {
    if (entry.is !== "reading" || closed) return;
    if (entry.unusual && !sure) {
      setSure(true);
      return;
    }
    store(withReading(field, value, entry.reading, gauge));
    setTyped("");
    setSure(false);
  };
  const type = (text: string): void => {
    setTyped(text);
    setSure(false);
  };
  const name = known ? fieldName(known.text, params.field) : params.point;
  const back = (): void =>
    router.up(to("point", { visit: params.visit, state: params.state, place: params.place, point: params.point }));
  const asking = sure && entry.is === "reading" && entry.unusual;
  return (
    <>
      <Top
        back={placeName(on.known, params.place)}
        href={to("point", { visit: params.visit, state: params.state, place: params.place, point: params.point })}
      />
      <main class="reading-screen">
        <Title
          title={name}
          figure={{ count: String(Math.min(count + 1, shots)), rest: t("reading.rest", { of: shots }) }}
        />
        <Pool as="section" label={t("reading.scale-label")} bare>
          <ReadingScale
            scale={scale}
            label={
              typed === "" && !scale.reading
                ? t("reading.scale.empty")
                : t("reading.scale", { value: typed || figure(value?.values.at(-1) ?? ""), unit: unitShown(unit) })
            }
            {...(verdict ? { verdict: { title: verdict.title, says: verdict.says } } : {})}
            {...(verdict?.limit
              ? {
                  source: {
                    words: t("reading.from", { basis: t(`basis.${verdict.limit.basis}`) }),
                    onPress: () => setOver("source"),
                  },
                }
              : {})}
          />
        </Pool>
        {count > 0 && (
          <ReadingList
            label={t("reading.list")}
            readings={readingList(field, value, entering, scale.direction === "under" ? "lowest" : "highest").map(
              (one) =>
                one.kind === "kept" && !closed && value
                  ? { ...one, onPress: () => store(withoutReading(value, Number(one.id))) }
                  : one,
            )}
          />
        )}
        {field.stopwatch ? (
          <Stopwatch
            label={name}
            clock={around.steadyMs}
            write={(seconds) => rounded(seconds, 1)}
            words={{
              start: t("reading.start"),
              stop: t("reading.stop"),
              again: t("reading.again"),
              keep: (written) => t("reading.keep-time", { value: written }),
            }}
            onKeep={(seconds) =>
              store(
                withReading(
                  field,
                  value,
                  { text: seconds.toFixed(1), unit: "s", value: seconds, canonical: seconds, decimals: 1 },
                  gauge,
                ),
              )
            }
          />
        ) : (
          <>
            <GaugeLine
              words={
                gauge
                  ? t("reading.gauge", {
                      resolution: rounded(gauge.resolution, 4),
                      error: rounded(gauge.error, 4),
                      unit: unitShown(unit),
                    })
                  : t("reading.no-gauge")
              }
              action={{ words: t("reading.change-gauge"), onPress: () => setOver("gauge") }}
            />
            <Keypad
              label={t("reading.keypad")}
              value={typed}
              onValue={type}
              decimal={comma ? "," : "."}
              minus={field.window[0] < 0}
              fraction={unit === "[in_i]"}
              words={{
                rubOut: t("reading.rub-out"),
                decimal: t("reading.point-key"),
                minus: t("reading.minus-key"),
                fraction: t("reading.fraction-key"),
              }}
              extra={(field.results ?? []).slice(0, 2).map((id) => ({
                id,
                words: id.replaceAll("-", " "),
                onPress: () =>
                  store(withReading(field, value, { text: id, unit, value: 0, canonical: 0, decimals: null }, gauge)),
              }))}
              keep={
                count >= shots && typed === ""
                  ? { words: t("reading.done"), onPress: back }
                  : {
                      words: typed === "" ? t("reading.keep-empty") : t("reading.keep", { value: typed }),
                      disabled: entry.is !== "reading" || closed,
                      onPress: keep,
                    }
              }
            >
              <ReadingEntry
                label={name}
                value={typed}
                onValue={type}
                onKeep={keep}
                {...(entry.is === "refused" ? { problem: problemText(entry.problem) } : {})}
              >
                <UnitSwitch label={t("reading.unit")} choices={unitsOffered(field)} chosen={unit} onChoose={setUnit} />
              </ReadingEntry>
              {asking && (
                <Notice
                  kind="plain"
                  title={t("reading.odd.title", { value: typed, unit: unitShown(entry.reading.unit) })}
                  says={t("reading.odd.says", {
                    from: rounded(convertTo(field, field.window[0], unit), 3),
                    to: rounded(convertTo(field, field.window[1], unit), 3),
                    unit: unitShown(unit),
                  })}
                  action={{ words: t("reading.odd.keep", { value: typed }), onPress: keep }}
                  second={{ words: t("reading.odd.again"), onPress: () => type("") }}
                />
              )}
            </Keypad>
          </>
        )}
      </main>
      <GaugeSheet
        known={on.known}
        field={field}
        unit={unit}
        open={over === "gauge"}
        onChoose={setOwn}
        onClose={() => setOver(undefined)}
      />
      <SourceSheet limit={verdict?.limit} open={over === "source"} onClose={() => setOver(undefined)} />
    </>
  );
}

const convertTo = (field: ReadingField, value: number, unit: string): number =>
  isQuantity(field.quantity) ? convert(value, field.unit, unit, field.quantity) : value;

export function Reading({ params }: { readonly params: ParamsOf<"reading"> }) {
  return (
    <OnVisit param={params.visit}>
      {(on) => {
        const field = on.known.points.get(params.point)?.point.fields[params.field];
        return field && "quantity" in field ? <ReadingBody on={on} params={params} field={field} /> : <MissingScreen />;
      }}
    </OnVisit>
  );
}
