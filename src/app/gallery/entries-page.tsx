/** Gallery: a budget by steps, a day by one press, and low, likely, high over one keypad. Invented figures. */
import { useState } from "preact/hooks";
import { BudgetChooser } from "../parts/budget-chooser.js";
import { DayEntry } from "../parts/day-entry.js";
import type { ThreeTexts } from "../parts/props-planning.js";
import { ThreeEntry } from "../parts/three-entry.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";

const tick = (): void => undefined;
const WORDS = {
  low: "low",
  likely: "likely",
  high: "high",
  lowOverLikely: "Low is more than likely.",
  likelyOverHigh: "Likely is more than high.",
  lowOverHigh: "Low is more than high.",
  next: "Next",
  keys: "Keys",
  rubOut: "Rub out",
  decimal: "Decimal comma",
};
const QUICK = [
  { id: "0", words: "today", day: "2026-11-30" },
  { id: "1", words: "+1 week", day: "2026-12-07" },
  { id: "2", words: "+2 weeks", day: "2026-12-14" },
  { id: "4", words: "+4 weeks", day: "2026-12-28" },
];

export function EntriesPage() {
  const [budget, setBudget] = useState(1100);
  const [day, setDay] = useState("2026-12-07");
  const [hours, setHours] = useState<ThreeTexts>(["0:40", "1:00", ""]);
  const step = (by: number) => ({
    id: String(by),
    words: `${by < 0 ? "−" : "+"}${Math.abs(by)}`,
    name: `${Math.abs(by)} euros ${by < 0 ? "less" : "more"}`,
    disabled: budget + by < 0,
    onPress: () => setBudget(budget + by),
  });
  return (
    <main class="app">
      <TopLine back={{ words: "Work list", onPress: tick }} keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title size="point" title="Entries" />
      <BudgetChooser
        id="budget"
        label="Budget"
        value={String(budget)}
        onValue={(value) => setBudget(Number(value) || 0)}
        unit="€"
        down={[step(-100), step(-500)]}
        up={[step(100), step(500)]}
        stepsLabel="Change the budget"
        says="Reaches to job 4, leaves €140."
      />
      <DayEntry
        id="day"
        label="Promised for"
        value={day}
        onDay={setDay}
        quick={QUICK}
        quickLabel="Days near"
        says="Mon 7 Dec 2026, an open day."
      />
      <DayEntry
        id="late"
        label="Order by"
        value="2026-12-06"
        onDay={tick}
        quick={[]}
        quickLabel="Days near"
        problem="A Sunday: nobody is there."
      />
      <ThreeEntry
        label="Hours for the wheel bearing"
        kind={{ of: "minutes" }}
        values={hours}
        onValues={setHours}
        onKeep={tick}
        unit="h"
        says="Hands on the car, not waiting."
        words={{ ...WORDS, unreadable: "Write hours and minutes as 1:30.", keep: (v) => `Keep ${v.join(", ")}` }}
      />
    </main>
  );
}

export function PricePage() {
  const [price, setPrice] = useState<ThreeTexts>(["1140,50", "960", "1290"]);
  return (
    <main class="app">
      <TopLine back={{ words: "Work list", onPress: tick }} keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title size="point" title="Price" />
      <ThreeEntry
        label="Price of the wheel bearing"
        kind={{ of: "money", digits: 2, decimal: "," }}
        values={price}
        onValues={setPrice}
        onKeep={tick}
        unit="€"
        words={{ ...WORDS, unreadable: "At most two places after the comma.", keep: (v) => `Keep ${v.join(" · ")}` }}
      />
    </main>
  );
}
