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
