/** Gallery: findings with the worst one open, counts as filters, gates. Invented. */
import { BecauseTrace } from "../parts/because-trace.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { CountStrip } from "../parts/count-strip.js";
import { FindingRow } from "../parts/finding-row.js";
import { GateNotice } from "../parts/gate-notice.js";
import { Band, Pool } from "../parts/pool.js";
import { SectionRow } from "../parts/section-row.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";

const tick = (): void => undefined;
export const SECTIONS = ["Round", "Findings", "Work list", "Hand-over"];

export function FindingsPage() {
  return (
    <main class="app">
      <TopLine words="Marlet 2 coupé, 1994" keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title title="Findings" />
      <CountStrip
        label="Show only"
        counts={[
          { mark: "dangerous", words: "Dangerous", count: 1, chosen: false },
          { mark: "major", words: "Major", count: 3, chosen: true },
          { mark: "minor", words: "Minor", count: 4, chosen: false },
          { mark: "advisory", words: "Advisory", count: 3, chosen: false },
          { mark: "sound", words: "Sound", count: 40, chosen: false },
          { mark: "not-looked", words: "Not looked at", count: 5, chosen: false },
          { mark: "cannot-reach", words: "Can’t get at it", count: 2, chosen: false },
        ]}
        onChoose={tick}
        sentence="Three major things at the rear left wheel; five points not looked at."
      />
      <CautionPanel form="bar" signal="danger" word="Danger" not="Do not drive" onPress={tick} />
      <Pool bare as="section" label="Worst finding">
        <FindingRow
          open
          mark="dangerous"
          markWord="Dangerous"
          title="Rear left wheel bearing near break-up"
          second="Rear left, certain."
          onPress={tick}
        >
          <BecauseTrace
            label="Because"
            steps={[
              { id: "1", kind: "Felt", says: "rocks badly at 12 and 6", aside: "10:31, photo 2", onPress: tick },
              { id: "2", kind: "Felt", says: "rough when turned by hand" },
              { id: "3", kind: "Measured", says: "end float 0.86 mm", aside: "± 0.03" },
              { id: "4", kind: "Limit", says: "0.80 mm", aside: "common practice, no maker’s figure", onPress: tick },
              { id: "5", kind: "So", says: "dangerous, certain", concludes: true },
            ]}
          />
        </FindingRow>
      </Pool>
      <ul>
        <li>
          <FindingRow
            mark="major"
            markWord="Major"
            title="Wheel bearing grumbles"
            second="Front right. No play. Likely"
            aside="sound 1"
            onPress={tick}
          />
        </li>
        <li>
          <FindingRow
            mark="major"
            markWord="Major"
            title="Front right end float"
            second="Too close to call: 0.24 ± 0.03, limit 0.25"
            onPress={tick}
          />
        </li>
        <li>
          <FindingRow mark="not-looked" markWord="Not looked at" title="Hub seal, front left" second="No time" />
        </li>
      </ul>
      <Band heading="Before the next step" aside="3">
        <GateNotice
          state="tripped"
          title="Road test"
          stateWords="Stopped"
          says="A wheel rocks badly."
          cautions={[
            {
              form: "small",
              signal: "danger",
              word: "Danger",
              not: "Do not drive. Move only by trailer.",
              why: { label: "Why", says: "A wheel bearing can break up." },
            },
          ]}
        />
        <GateNotice
          state="not-cleared"
          title="Lift the car"
          stateWords="Not cleared: do this first"
          first={[
            { id: "a", words: "Jack point, front left", onPress: tick, done: true },
            { id: "b", words: "Jack point, rear left", onPress: tick },
          ]}
        />
        <GateNotice state="cleared" title="Touch hubs and discs" stateWords="Cleared" />
      </Band>
      <SectionRow
        label="Visit"
        sections={SECTIONS.map((words) => ({ id: words, words, href: `#${words}`, here: words === "Findings" }))}
      />
    </main>
  );
}
