/** A reading: the scale, what is kept, and entering it; limits and the last value only once it is entered. */
import { useState } from "preact/hooks";
import { Pool } from "../parts/pool.js";
import { ReadingList } from "../parts/reading-entry.js";
import { ReadingScale } from "../parts/reading-scale.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { capital, fieldName, placeName, replyWord } from "../state/knowledge.js";
import { entryOf, readingRound } from "../state/reading-round.js";
import { type ReadingField, readingList, setUpIn } from "../state/reading-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { figure, t } from "../texts/reading.js";
import { unitShown } from "../texts/units.js";
import { MissingScreen, Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { lookingAt, type OnDesk, OnVisit } from "./on-visit.js";
import { ReadingKeys } from "./reading-keys.js";
import type { OverReading } from "./reading-over.js";
import { type ReadingState, useReading } from "./use-reading.js";

const Watch = lazy(() => import("./reading-watch.js").then((file) => file.Watch), Nothing);
const StopClock = lazy(() => import("./stop-clock.js").then((file) => file.StopClockBand), Nothing);
const WorkedValues = lazy(() => import("./worked.js").then((file) => file.WorkedValues), Nothing);
const ReadingSheets = lazy(() => import("./reading-over.js").then((file) => file.ReadingSheets), Nothing);

function Scale({ state, onSource }: { readonly state: ReadingState; readonly onSource: () => void }) {
  const { entering, scale, verdict, value } = state;
  const shown = entering.typed || figure(value?.values.at(-1) ?? "");
  const unit = unitShown(entering.unit);
  return (
    <Pool as="section" label={t("reading.scale-label")} bare>
      <ReadingScale
        scale={scale}
        label={scale.reading ? t("reading.scale", { value: shown, unit }) : t("reading.scale.empty")}
        {...(verdict ? { verdict: { title: verdict.title, says: verdict.says } } : {})}
        {...(verdict?.limit
          ? { source: { words: t("reading.from", { basis: t(`basis.${verdict.limit.basis}`) }), onPress: onSource } }
          : {})}
      />
    </Pool>
  );
}

function Kept({
  state,
  field,
  onReading,
}: {
  readonly state: ReadingState;
  readonly field: ReadingField;
  readonly onReading: (index: number) => void;
}) {
  if (!state.value) return null;
  const rows = readingList(
    field,
    state.value,
    state.entering,
    state.scale.direction === "under" ? "lowest" : "highest",
  );
  const unit = unitShown(state.entering.unit);
  const readings = rows.map((row) => {
    const index = Number(row.id);
    if (row.kind !== "kept") return row;
    const caption = state.was?.index === index ? t("reading.was", { n: index + 1, was: state.was.text }) : row.caption;
    const name = t("reading.one", { n: index + 1, value: `${row.value} ${unit}` });
    return state.closed ? { ...row, caption } : { ...row, caption, name, onPress: () => onReading(index) };
  });
  return <ReadingList label={t("reading.list")} readings={readings} />;
}

interface ReadingBodyProps {
  readonly on: OnDesk;
  readonly params: ParamsOf<"reading">;
  readonly field: ReadingField;
}

function ReadingBody({ on, params, field }: ReadingBodyProps) {
  const { router } = useApp();
  const [over, setOver] = useState<OverReading>();
  const state = useReading(on, params, field);
  const known = on.known.points.get(params.point);
  const name = known ? fieldName(known.text, params.field) : params.point;
  const { visit, state: carState, place, point } = params;
  const [typing, setTyping] = useState(false);
  // A point asked in another's entry has no page of its own to go back to.
  const back = to("point", { visit, ...entryOf(on.assessment.asked, { state: carState, place, point }) });
  const count = Math.min((state.value?.values.length ?? 0) + 1, state.shots);
  const round = readingRound(lookingAt(on), { at: { state: carState, place, point }, field: params.field });
  const next = round?.next;
  const resultWords = (id: string): string => (known ? replyWord(known.text, params.field, id, on.who) : id);
  const within = on.known.states.get(carState)?.within;
  const done = (): void => router.up(back);
  return (
    <>
      <Top back={capital(placeName(on.known, place))} href={back} />
      <main class="reading-screen">
        <Title
          title={name}
          {...(round ? { second: t("reading.round", { done: round.done, all: round.all }) } : {})}
          figure={{ count: String(count), rest: t("reading.rest", { of: state.shots }) }}
        />
        {within !== undefined && <StopClock visit={on.stream} within={within} />}
        <Scale state={state} onSource={() => setOver("source")} />
        <Kept state={state} field={field} onReading={(reading) => setOver({ reading })} />
        {field.stopwatch && !typing ? (
          <Watch
            name={name}
            state={state}
            field={field}
            resultWords={resultWords}
            onType={() => setTyping(true)}
            onDone={done}
          />
        ) : (
          <ReadingKeys
            name={name}
            field={field}
            state={state}
            setUp={setUpIn(field, known?.point["set-up-error"], state.entering.unit)}
            onGauge={() => setOver("gauge")}
            onPhoto={() => setOver("photo")}
            resultWords={resultWords}
            {...(next
              ? {
                  next: {
                    words: t("reading.next", { what: next.words }),
                    onPress: () => router.swap(to("reading", { visit, ...next.at, field: next.field })),
                  },
                }
              : {})}
            onDone={done}
          />
        )}
        {state.value && <WorkedValues on={on} point={point} place={place} />}
      </main>
      {over !== undefined && (
        <ReadingSheets
          on={on}
          params={params}
          field={field}
          state={state}
          over={over}
          onClose={() => setOver(undefined)}
        />
      )}
    </>
  );
}

export function Reading({ params }: { readonly params: ParamsOf<"reading"> }) {
  return (
    <OnVisit param={params.visit}>
      {(on) => {
        const field = on.known.points.get(params.point)?.point.fields[params.field];
        const key = `${params.state} ${params.place} ${params.point} ${params.field}`;
        return field && "quantity" in field ? (
          <ReadingBody key={key} on={on} params={params} field={field} />
        ) : (
          <MissingScreen />
        );
      }}
    </OnVisit>
  );
}
