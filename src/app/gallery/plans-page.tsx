/** Gallery: the plan in both kinds, from both sides, with many and with added places. */
import { CarPlan } from "../parts/car-plan.js";
import type { CarPlanPlace } from "../parts/props-looking.js";
import { Title } from "../parts/title.js";

const tick = (): void => undefined;
const named = (id: string, look: CarPlanPlace["look"], more: Partial<CarPlanPlace> = {}): CarPlanPlace => ({
  id,
  look,
  words: id,
  says: look,
  ...more,
});

const WHOLE: readonly CarPlanPlace[] = [
  named("car", "not-looked"),
  ...["FL", "FR"].map((id) => named(id, "done", { mark: "major" })),
  ...["RL", "RR"].map((id) => named(id, "not-looked", { mark: "dangerous" })),
  ...[
    "main-rail-L-fore",
    "main-rail-R-fore",
    "main-rail-R-mid",
    "sill-tube-R-fore",
    "outrigger-R-1",
    "xm-front-top",
    "dash-hoop",
  ].map((id) => named(id, "done")),
  ...["main-rail-L-mid", "sill-tube-L-mid", "outrigger-L-3", "seat-cross"].map((id) => named(id, "not-looked")),
  named("main-rail-L-aft", "here"),
  named("pickup-FL-lower-fore", "done"),
  named("pickup-RL-lower-aft", "not-looked"),
  named("tank-strap-L", "not-looked", { at: [62, 30] }),
  named("brace-2", "done", { at: [50, 75] }),
];
/** Joints of one corner as the shared places have them: fore and aft, upper and lower, inner and outer. */
const JOINTS: readonly CarPlanPlace[] = [
  named("FL", "not-looked"),
  named("RL", "done"),
  named("FL-upper-fore", "done", { at: [13, 29] }),
  named("FL-upper-aft", "done", { at: [23, 29] }),
  named("FL-upper-outer", "not-looked", { at: [18, 19] }),
  named("FL-lower-fore", "here", { at: [13, 32] }),
  named("FL-lower-aft", "not-looked", { at: [23, 32] }),
  named("FL-trackrod-outer", "not-looked", { at: [11, 20] }),
  named("RL-upper-fore", "done", { at: [75, 29] }),
  named("RL-lower-aft", "done", { at: [85, 32] }),
];
const BODY: readonly CarPlanPlace[] = [
  named("car", "done"),
  named("FL", "done", { letter: "a" }),
  named("FR", "not-looked"),
  named("RL", "here", { letter: "b" }),
  named("RR", "done", { mark: "minor" }),
  named("boot-well", "not-looked"),
  named("door-L", "not-looked"),
];

export function PlansPage() {
  return (
    <main class="app">
      <Title title="Plans" />
      <CarPlan
        plan="chassis"
        side="left"
        places={WHOLE}
        label="Chassis from the left"
        listWords="Places"
        onPlace={tick}
      />
      <CarPlan
        plan="chassis"
        side="right"
        places={WHOLE}
        label="Chassis from the right"
        listWords="Places on the right"
        cone={false}
        onPlace={tick}
      />
      <CarPlan
        plan="chassis"
        side="left"
        places={JOINTS}
        label="Joints"
        listWords="Joints at the left"
        onPlace={tick}
      />
      <CarPlan
        plan="body"
        side="left"
        places={BODY}
        label="Body from the left"
        listWords="Places on the body"
        onPlace={tick}
      />
      <CarPlan
        plan="body"
        side="right"
        places={BODY}
        label="Body from the right"
        listWords="Places again"
        cone={false}
      />
      <div class="pool">
        <CarPlan
          plan="body"
          side="left"
          places={BODY}
          label="Body in the pool"
          listWords="Places in the pool"
          cone={false}
        />
      </div>
    </main>
  );
}
