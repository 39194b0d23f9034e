/** Gallery: the work list that plans: estimate, bundles, where the money ends, what holds the car up. Invented figures. */
import { JobRow } from "../parts/job-row.js";
import { Pool } from "../parts/pool.js";
import { RangeScale } from "../parts/range-scale.js";
import { HoldLine } from "../parts/step-line.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";
import { ReachLine, WorkBundle } from "../parts/work-bundle.js";

const tick = (): void => undefined;

export function PlanningPage() {
  return (
    <main class="app">
      <TopLine words="Marlet 2 coupé, 1994" keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title title="Work list" second="What belongs together, in order" />
      <RangeScale
        label="Likely €960, from €685 to €1 290; enough four times in five €1 080; budget €1 100"
        range={{
          low: { at: 685, text: "€685" },
          likely: { at: 960, text: "likely €960, 7.1 h" },
          high: { at: 1290, text: "€1 290" },
          p80: { at: 1080, text: "4 in 5: €1 080" },
          budget: { at: 1100, text: "budget €1 100" },
        }}
        verdict={{ title: "Likely within the budget", aside: "€140 left", says: "At worst €190 over." }}
      />
      <Pool bare as="section" label="Within the budget">
        <WorkBundle title="Rear left wheel off" aside="3.1–5.6 h" shared="opened and put back once, 0.4 h">
          <JobRow
            number={1}
            title="Brake hose, rear left"
            mark="dangerous"
            markWord="Dangerous"
            byWhen="before the car is moved"
            hours="0.5–0.9 h"
            cost="€115–245"
            apart="with what is open anyway 0.6 h, alone 1.4 h"
            open
            why="First: nothing else counts until the car may roll."
            decision={{ label: "Owner:", value: "yes, now", action: "Change", onPress: tick }}
            onPress={tick}
          />
          <WorkBundle level={2} title="Hub carrier out" aside="2.0–3.4 h" shared="opened and put back once, 1.3 h">
            <JobRow
              number={2}
              title="Wheel bearing, rear left"
              mark="major"
              markWord="Major"
              byWhen="within 500 km"
              hours="1.2–2.0 h"
              cost="€250–400"
              parts="ordered, promised for Wed 9 Dec"
              apart="with what is open anyway 1.6 h, alone 3.4 h"
              onPress={tick}
            />
            <WorkBundle
              level={3}
              title="Lower wishbone with its bushes off the carrier"
              aside="1.1–1.9 h"
              shared="opened and put back once, 0.8 h"
            >
              <JobRow
                number={3}
                title="Bushes of the lower wishbone, both ends"
                mark="minor"
                markWord="Minor"
                byWhen="while open"
                hours="0.9–1.4 h"
                cost="€1 080–1 325"
                parts="waits for a price"
                onPress={tick}
              />
            </WorkBundle>
          </WorkBundle>
        </WorkBundle>
        <JobRow
          number={4}
          title="Geometry, after all joints"
          mark="major"
          markWord="Major"
          byWhen="with job 1"
          hours="1.5–4.0 h"
          cost="€135–360"
          onPress={tick}
        />
      </Pool>
      <ReachLine words="€1 100 reaches to here" aside="leaves €140" />
      <JobRow
        number={5}
        title="Wax the underside"
        mark="advisory"
        markWord="Advisory"
        byWhen="next visit"
        hours="6–14 h"
        cost="€620–1 340"
        onPress={tick}
      />
      <ReachLine
        over
        words="€1 100 does not reach"
        aside="over by €310"
        says="What must be done before the car moves costs more than the budget."
      />
      <HoldLine
        title="The bearing holds the car up"
        days="12 days"
        says="Order by Fri 27 Nov, here Wed 9 Dec, car ready Fri 11 Dec."
        onPress={tick}
      />
      <HoldLine title="The owner’s answer to job 3" days="not known" />
    </main>
  );
}
