/** The steps of a because with the formula behind every value worked out. Fetches what tells it with the first one opened. */
import type { BecauseStep } from "../parts/props-telling.js";
import type { Step } from "../state/because.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnDesk } from "./on-visit.js";

const WorkedPanel = lazy(() => import("./worked.js").then((file) => file.WorkedPanel), Nothing);

export const withWorkings = (on: OnDesk, steps: readonly Step[]): readonly BecauseStep[] =>
  steps.map(({ worked, ...step }) =>
    worked === undefined
      ? step
      : { ...step, inside: () => <WorkedPanel on={on} id={worked.id} place={worked.place} /> },
  );
