/** Gallery: a reading with its scale and keypad, in millimetres with a comma and in inches with fractions. */
import { useState } from "preact/hooks";
import { Keypad } from "../parts/keypad.js";
import { Pool } from "../parts/pool.js";
import { GaugeLine, ReadingEntry, ReadingList } from "../parts/reading-entry.js";
import { ReadingScale } from "../parts/reading-scale.js";
import { Stopwatch } from "../parts/stopwatch.js";
import { UnitSwitch } from "../parts/switch.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";

const tick = (): void => undefined;
const KEYS = { rubOut: "Rub out", decimal: "Decimal comma", minus: "Minus", fraction: "Fraction" };
const UNITS = [
  { id: "mm", words: "mm" },
  { id: "[in_i]", words: "in", name: "inch" },
  { id: "thou", words: "thou" },
];
const EDGES = [
  { at: 0.1, grade: "advisory", text: "0,10" },
  { at: 0.13, grade: "minor", text: "0,13" },
  { at: 0.25, grade: "major", text: "0,25", caption: "major limit" },
  { at: 0.8, grade: "dangerous", text: "0,80" },
] as const;

export function ReadingPage() {
  const [value, setValue] = useState(new URLSearchParams(location.search).get("value") ?? "0,24");
  const read = Number(value.replace(",", "."));
  const known = value !== "" && Number.isFinite(read);
  return (
    <main class="app">
      <TopLine back={{ words: "Rear left", onPress: tick }} keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title size="point" title="Bearing end float" figure={{ count: "", rest: "Reading 3 of 3" }} />
      <Pool bare as="section" label="Scale">
        <ReadingScale
          label="Ruler from 0,08 to 0,28 mm"
          scale={{
            direction: "over",
            edges: EDGES,
            window: [0, 2],
            resolution: 0.01,
            limitsShown: true,
            reading: known ? { value: read, uncertainty: 0.025 } : undefined,
            kept: known ? [0.21, 0.22] : [],
            write: (x) => x.toFixed(1).replace(".", ","),
          }}
          verdict={
            known
              ? { title: "Too close to call", aside: "0,24 mm", says: `${value} ± 0,03 spans 0,25. Measure again.` }
              : undefined
          }
          source={{ words: "Limit: common practice, no maker’s figure", onPress: tick }}
        />
      </Pool>
      <ReadingList
        label="Readings"
        readings={[
          { id: "1", value: "0,21", caption: "1", kind: "kept", onPress: tick },
          { id: "2", value: "0,22", caption: "2", kind: "kept", onPress: tick },
          { id: "now", value: value || "–", caption: "highest", kind: "now" },
          { id: "mean", value: "0,22", caption: "mean", kind: "derived" },
        ]}
      />
      <GaugeLine words="Gauge reads to 0,01, ± 0,01 mm" action={{ words: "Change", onPress: tick }} />
      <Keypad
        label="Keys"
        value={value}
        onValue={setValue}
        decimal=","
        minus
        words={KEYS}
        camera={{ words: "Photo", onPress: tick }}
        extra={[{ id: "no-echo", words: "No echo", onPress: tick }]}
        keep={{ words: `Keep ${value}`, disabled: !known, onPress: tick }}
      >
        <ReadingEntry
          label="Bearing end float"
          value={value}
          onValue={setValue}
          onKeep={tick}
          problem={read > 2 ? "More than 2 mm is unusual. Look again." : undefined}
        >
          <UnitSwitch label="Unit" choices={UNITS} chosen="mm" onChoose={tick} />
        </ReadingEntry>
      </Keypad>
    </main>
  );
}

export function InchPage() {
  const [value, setValue] = useState("3/32");
  return (
    <main class="app">
      <TopLine back={{ words: "Front right", onPress: tick }} keeping={{ kind: "keeping", words: "Keeping …" }} />
      <Title size="point" title="Wall thickness" />
      <Pool bare as="section" label="Scale">
        <ReadingScale
          label="Ruler from 0.9 to 1.6 mm"
          scale={{
            direction: "under",
            edges: [
              { at: 0.93, grade: "dangerous", text: "0.93" },
              { at: 1.24, grade: "major", text: "1.24", caption: "major limit" },
              { at: 1.32, grade: "minor", text: "1.32" },
              { at: 1.4, grade: "advisory", text: "1.40" },
            ],
            nominal: { at: 1.55, text: "1.55", caption: "sound end" },
            window: [0.3, 4],
            resolution: 0.01,
            limitsShown: true,
            reading: { value: 1.26, uncertainty: 0.05 },
          }}
          verdict={{ title: "Too close to call", aside: "81 % left", says: "1.26 ± 0.05 spans 1.24. Measure again." }}
        />
      </Pool>
      <Keypad
        label="Keys"
        value={value}
        onValue={setValue}
        decimal="."
        minus
        fraction
        words={KEYS}
        keep={{ words: `Keep ${value}`, onPress: tick }}
      >
        <ReadingEntry label="Wall thickness" value={value} onValue={setValue}>
          <UnitSwitch label="Unit" choices={UNITS} chosen="[in_i]" onChoose={tick} />
        </ReadingEntry>
      </Keypad>
      <Pool as="section" label="Before entry" bare>
        <ReadingScale
          label="Ruler from 0 to 120 degrees"
          scale={{ direction: "over", edges: [], window: [0, 120], limitsShown: false }}
        />
      </Pool>
      <Stopwatch
        label="Pedal held"
        clock={() => performance.now()}
        write={(s) => `${s.toFixed(1)} s`}
        words={{ start: "Start", stop: "Stop", again: "Again", keep: (w) => `Keep ${w}` }}
        onKeep={tick}
      />
    </main>
  );
}
