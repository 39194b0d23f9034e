/** One part's readings over all visits: chart, when it reaches its limits, every reading, and what is said of it. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import type { Seen } from "../../core/trend/index.js";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { WearChart } from "../parts/wear-chart.js";
import { useApp } from "../state/app.js";
import { type ParamsOf, to } from "../state/routes.js";
import { lastSaid, undoSaid } from "../state/wearing-acts.js";
import { wearChartInput } from "../state/wearing-chart.js";
import { type Wearing, wearingAt } from "../state/wearing-view.js";
import {
  breakText,
  chartText,
  dateOf,
  lookText,
  newestOf,
  rateText,
  reachLines,
  readingText,
  typedText,
  withinText,
} from "../state/wearing-words.js";
import { t } from "../texts/wearing.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useWearing, type WearingNow } from "./use-wearing.js";
import { SayWear } from "./wear-say.js";

function Reaches({ one }: { readonly one: Wearing }) {
  const from = newestOf(one)?.day ?? 0;
  const { along } = one.reach;
  const rate = along && one.reach.is === "reaches" ? rateText(along, one.unit) : undefined;
  const look = one.passed ? undefined : along && lookText(along);
  const within = withinText(one);
  const others = one.series.reaches.filter((it) => it !== one.reach && it.is !== "alone");
  return (
    <>
      <ul class="wear-says n">
        {reachLines(one.reach, one.unit, from).map((line) => (
          <li key={line}>{line}</li>
        ))}
        {within && <li>{within}</li>}
        {rate && <li>{rate}</li>}
        {look && <li>{look}</li>}
      </ul>
      {others.map((it) => (
        <ul class="wear-says n" key={`${it.edge.grade} ${it.edge.at}`}>
          {reachLines(it, one.unit, from)
            .slice(0, 1)
            .map((line) => (
              <li key={line}>{line}</li>
            ))}
        </ul>
      ))}
    </>
  );
}

interface ReadingsProps {
  readonly one: Wearing;
  readonly now: WearingNow;
  readonly onSay: (seen: Seen) => void;
}

/** Newest first, with what parts them from the ones before. */
function Readings({ one, now, onSay }: ReadingsProps) {
  const { series, unit } = one;
  const all = [...series.runs.flat(), ...series.doubtful].sort((a, b) => b.day - a.day);
  return (
    <Band heading={t("wear.readings")}>
      {all.map((seen) => {
        const parted = series.breaks.find(({ visit }) => visit === seen.visit);
        const marks = series.marks.filter(({ visit }) => visit === seen.visit);
        const reading = one.readings.get(seen.visit);
        const isDoubtful = series.doubtful.includes(seen);
        return (
          <div key={seen.visit}>
            <ListRow
              title={readingText(seen, unit)}
              second={[
                reading ? typedText(now.worn.known, reading) : "",
                ...(isDoubtful ? [t("wear.doubtful")] : []),
                ...marks.map(({ kind }) => t(`wear.mark.${kind}`)),
              ]
                .filter((text) => text !== "")
                .join(". ")}
              aside={dateOf(seen.day)}
              onPress={() => onSay(seen)}
            />
            {parted && (
              <Notice
                kind="plain"
                title={breakText(now.worn.known, parted, unit)}
                {...(parted.kind === "unsaid" ? { action: { words: t("wear.say"), onPress: () => onSay(seen) } } : {})}
              />
            )}
          </div>
        );
      })}
    </Band>
  );
}

function WearBody({ car, params }: { readonly car: CarState; readonly params: ParamsOf<"wear"> }) {
  const { journal } = useApp();
  const now = useWearing(car);
  const [said, setSaid] = useState<Seen>();
  if (now === undefined) return <OpeningScreen />;
  const one = now && !now.covered ? wearingAt(now.all, params.series, params.place) : undefined;
  const up = to("wearing", { car: params.car });
  if (!now || !one)
    return (
      <Plain back={t("wearing.title")} href={up} title={t("wearing.title")}>
        <EmptyState
          title={now?.covered ? t("wearing.covered") : t("wear.gone")}
          says={now?.covered ? "" : t("wear.gone.says")}
          action={{ words: t("wearing.title"), href: up }}
        />
      </Plain>
    );
  const last = lastSaid(now.plans, journal.writer.value);
  return (
    <Plain back={t("wearing.title")} href={up} title={one.title} second={one.where}>
      <WearChart chart={wearChartInput(one)} label={chartText(one)} />
      <Reaches one={one} />
      <Readings one={one} now={now} onSay={setSaid} />
      {last && (
        <div class="acts">
          <Tool words={t("wear.undo")} onPress={() => void undoSaid(journal, last.visit, last.step)} />
        </div>
      )}
      {said && <SayWear one={one} now={now} seen={said} onClose={() => setSaid(undefined)} />}
    </Plain>
  );
}

export const Wear = ({ params }: { readonly params: ParamsOf<"wear"> }) => (
  <OnCar param={params.car}>{(car) => <WearBody car={car} params={params} key={nameKey(params)} />}</OnCar>
);

const nameKey = ({ series, place }: ParamsOf<"wear">): string => `${series}@${place}`;
