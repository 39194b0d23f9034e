/** A hand-over for one reader as the screen stands: made anew only when something it says may have changed. */
import { useMemo } from "preact/hooks";
import type { Audience } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import type { HandoverGround } from "../state/handover-ground.js";
import { type MadeHandover, madeHandover } from "../state/handover-made.js";
import { momentOf } from "../state/handover-moment.js";
import { heardIn } from "../state/heard.js";
import type { OnPlan } from "./on-plan.js";

/** Undefined: still being worked out. */
export type Trends = HandoverGround["trends"];

export function useMade(on: OnPlan, reader: Audience, trends: Trends): readonly [HandoverGround, MadeHandover] {
  const { phone, journal } = useApp();
  const { telling, visit, car, tree, assessment, due, said, house, input, plan, currency, desk } = on;
  const earlier = desk.earlier.value;
  const heard = heardIn(journal, visit, earlier);
  const heardText = JSON.stringify(heard);
  return useMemo(() => {
    const ground: HandoverGround = {
      telling: { ...telling, who: reader },
      for: reader,
      madeAt: momentOf(phone.now()),
      today: input.today,
      engine: desk.engineVersion(),
      visit,
      earlier,
      heard,
      car,
      tree,
      assessment,
      due,
      said,
      house,
      input,
      plan,
      currency,
      trends,
    };
    return [ground, madeHandover(ground)];
  }, [
    reader,
    telling.known,
    visit,
    car,
    tree,
    assessment,
    due,
    said,
    house,
    input,
    plan,
    earlier,
    heardText,
    desk,
    phone,
    trends,
  ]);
}
