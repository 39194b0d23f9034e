/** What the engine does in a car state: as the sheet says, or as sheets meant that were written before they could say it. */
import type { CarState } from "./schema-types.js";

export type EngineIn = NonNullable<CarState["engine"]>;

/** Car states as they were brought and frozen before: an edition never changes, so these ids go on meaning what they did. */
const MEANT: ReadonlyMap<string, EngineIn> = new Map([
  ["w3-running", "running"],
  ["w4-road", "driving"],
  ["w5-hot", "hot"],
  ["w5-soak", "hot"],
  ["q3-first-start", "running"],
  ["q4-first-metres", "driving"],
]);

export const engineIn = ({ id, engine }: Pick<CarState, "id" | "engine">): EngineIn | undefined =>
  engine ?? MEANT.get(id);
