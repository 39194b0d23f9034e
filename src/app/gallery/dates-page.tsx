/** Gallery: rulers of estimates in every state, the way of a part, and dates. Invented figures. */
import type { SpanDay, SpanInput } from "../../core/report/index.js";
import { Band } from "../parts/pool.js";
import { RangeScale } from "../parts/range-scale.js";
import { SpanStrip } from "../parts/span-strip.js";
import { StepLine } from "../parts/step-line.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";

const tick = (): void => undefined;

/** Days from Monday 30 November 2026 on; Saturdays and Sundays shut, Mondays written. */
const daysFrom = (count: number): readonly SpanDay[] =>
  Array.from({ length: count }, (_, index) => {
    const date = new Date(Date.UTC(2026, 10, 30 + index));
    const month = date.getUTCMonth() === 10 ? "Nov" : date.getUTCMonth() === 11 ? "Dec" : "Jan";
    return {
      day: date.toISOString().slice(0, 10),
      shut: index % 7 > 4,
      text: index % 7 === 0 ? `${date.getUTCDate()} ${month}` : undefined,
    };
  });

const spanOf = (days: number): SpanInput => ({
  days: daysFrom(days),
  rows: [
    {
      id: "a",
      text: "Aldo",
      look: "person",
      strokes: [
        { id: "1", from: 0.2, to: 1.1, text: "1" },
        { id: "w", from: 1.1, to: 9, look: "waits" },
        { id: "2", from: 9, to: 10.4, text: "2" },
        { id: "3", from: 10.4, to: 10.9, text: "3" },
      ],
    },
    { id: "b", text: "Brit", look: "person", strokes: [{ id: "4", from: 3, to: 4.6, text: "4" }] },
    {
      id: "lift",
      text: "Lift",
      look: "lift",
      strokes: [
        { id: "l1", from: 0.2, to: 4.6 },
        { id: "l2", from: 9, to: 11 },
      ],
    },
  ],
  marks: [
    { id: "in", at: 9, text: "bearing in Wed 9", look: "arrival" },
    { id: "ready", at: 11, text: "ready Fri 11", look: "ready" },
    { id: "wanted", at: 12, text: "wanted Sat 12", look: "wanted" },
  ],
});

const LINES = [
  { id: "1", words: "Mon 30 Nov to Tue 1 Dec: job 1, Aldo, on the lift" },
  { id: "2", words: "Wed 9 Dec: the bearing comes in" },
  { id: "3", words: "Wed 9 to Thu 10 Dec: jobs 2 and 3, Aldo, on the lift" },
  { id: "4", words: "Fri 11 Dec: the car is ready; wanted Sat 12 Dec" },
];

const STEPS = ["ordered", "promised", "arrived", "checked", "fitted"] as const;
const stepsAt = (here: number) =>
  STEPS.map((words, index) => ({
    id: words,
    words,
    look: index < here ? ("done" as const) : index === here ? ("here" as const) : ("open" as const),
    spoken: index < here ? "done" : index === here ? "here now" : "to come",
    aside: ["27 Nov", "9 Dec", "10 Dec"][index],
  }));

export function DatesPage() {
  return (
    <main class="app">
      <TopLine back={{ words: "Work list", onPress: tick }} keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title title="Dates" second="Car in on Mon 30 Nov" />
      <SpanStrip
        span={spanOf(14)}
        label="Dates in order"
        lines={LINES}
        signs="Warm stroke: a part comes in. Slanted: shut. Outline: on the lift."
      />
      <Band heading="Six weeks">
        <SpanStrip span={spanOf(42)} label="Six weeks in order" lines={LINES} />
      </Band>
      <Band heading="Where the parts are">
        <StepLine label="Wheel bearing" steps={stepsAt(1)} />
        <StepLine label="Brake hose" steps={stepsAt(4)} />
      </Band>
      <Band heading="Hours">
        <RangeScale
          label="Likely 7:06, from 5:30 to 10:45 hours"
          range={{
            low: { at: 330, text: "5:30 h" },
            likely: { at: 426, text: "likely 7:06 h" },
            high: { at: 645, text: "10:45 h" },
          }}
        />
        <RangeScale
          label="Likely 1:00, for certain"
          range={{
            low: { at: 60, text: "1:00 h" },
            likely: { at: 60, text: "likely 1:00 h" },
            high: { at: 60, text: "1:00 h" },
          }}
        />
      </Band>
      <Band heading="Budget far off">
        <RangeScale
          label="Likely €1 900, from €1 685 to €2 290; budget €400"
          range={{
            low: { at: 1685, text: "€1 685" },
            likely: { at: 1900, text: "likely €1 900, 14 h" },
            high: { at: 2290, text: "€2 290" },
            budget: { at: 400, text: "budget €400" },
          }}
          verdict={{ title: "Over the budget", aside: "by €1 500" }}
        />
        <RangeScale
          label="Likely €96, from €68 to €129; budget €1 100"
          range={{
            low: { at: 68, text: "€68" },
            likely: { at: 96, text: "likely €96" },
            high: { at: 129, text: "€129" },
            budget: { at: 1100, text: "budget €1 100" },
          }}
        />
      </Band>
    </main>
  );
}
