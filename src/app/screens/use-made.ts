/** A hand-over for one reader as the screen stands: made anew only when something it says may have changed. */
import { useMemo } from "preact/hooks";
import type { Audience } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import type { HandoverGround } from "../state/handover-ground.js";
import { type MadeHandover, madeHandover } from "../state/handover-made.js";
import { momentOf } from "../state/handover-moment.js";
import { heardIn } from "../state/heard.js";
import type { LooksNow } from "../state/looks-ground.js";
import { worthIn } from "../state/order-by-need.js";
import type { OnPlan } from "./on-plan.js";

/** What is told over all visits of the car: what wears, when to look again. */
export interface Trends extends Pick<HandoverGround, "trends" | "looks" | "visitsUnread"> {
  readonly again?: LooksNow;
}

/** `told` undefined: still being worked out. */
export function useMade(
  on: OnPlan,
  reader: Audience,
  told: Trends | undefined,
): readonly [HandoverGround, MadeHandover] {
  const { phone, journal } = useApp();
  const { telling, visit, car, tree, assessment, due, said, house, input, plan, currency, desk } = on;
  const earlier = desk.earlier.value;
  const heard = heardIn(journal, visit, earlier);
  const worth = worthIn(visit.stream);
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
      worth,
      due,
      said,
      house,
      input,
      plan,
      currency,
      trends: told?.trends,
      looks: told?.looks,
      visitsUnread: told?.visitsUnread,
    };
    return [ground, madeHandover(ground)];
  }, [
    reader,
    telling.known,
    visit,
    car,
    tree,
    assessment,
    worth,
    due,
    said,
    house,
    input,
    plan,
    earlier,
    heardText,
    desk,
    phone,
    told,
  ]);
}
