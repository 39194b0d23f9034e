/** Gallery: jobs in order and the bracket of one access. Invented figures. */
import { BundleBracket, JobRow } from "../parts/job-row.js";
import { Pool } from "../parts/pool.js";
import { SectionRow } from "../parts/section-row.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";
import { SECTIONS } from "./findings-page.js";

const tick = (): void => undefined;

export function WorkPage() {
  return (
    <main class="app">
      <TopLine
        words="Marlet 2 coupé, 1994"
        keeping={{ kind: "room", words: "Room for about 40 photos", onPress: tick }}
      />
      <Title title="Work list" second="Most urgent first" />
      <Pool bare as="section" label="Jobs in order">
        <BundleBracket title="Rear left wheel and hub off" aside="0.9–1.3 h once">
          <JobRow
            number={1}
            title="Wheel bearing, rear left"
            mark="dangerous"
            markWord="Dangerous"
            byWhen="before the car is moved"
            hours="1.0–2.5 h"
            cost="€115–245"
            open
            why="First: nothing else counts until the car may roll."
            decision={{ label: "Owner:", value: "yes, now", action: "Change", onPress: tick }}
            onPress={tick}
          />
          <JobRow
            number={2}
            title="Look at the other side"
            mark="advisory"
            markWord="Advisory"
            byWhen="with job 1"
            hours="0.3–0.5 h"
            onPress={tick}
          />
        </BundleBracket>
        <JobRow
          number={3}
          title="Measure front right again"
          mark="major"
          markWord="Major"
          byWhen="too close to call"
          hours="0.3–0.5 h"
          cost="€25–45"
          onPress={tick}
        />
      </Pool>
      <JobRow
        number={4}
        title="Wheel studs"
        mark="minor"
        markWord="Minor"
        byWhen="next visit"
        hours="1.0–2.0 h"
        open
        why="Small, and the wheel is off anyway."
        onPress={tick}
      />
      <SectionRow
        label="Visit"
        sections={SECTIONS.map((words) => ({ id: words, words, href: `#${words}`, here: words === "Work list" }))}
      />
    </main>
  );
}
