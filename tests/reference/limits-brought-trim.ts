/** How a value of a chosen size is brought about under each limit of the trim sheet. Refuses to know any edge. */
import { type Applies, type Brought, of, plain } from "./limit-brought.js";

const PANEL = "panel-card-L";
const KIND = "fix-clip";
/** More than any car has: so many that the least share over an edge is still a whole fixing. */
const WANTED = 10_240;

/** What wood takes up from air of 85 % humidity alone. */
const AIR_AT_85 = 85 * (0.752 - 1.642 * 0.85 + 1.184 * 0.85 * 0.85);

export const TRIM_BROUGHT: Readonly<Record<string, Brought>> = {
  "trim.wood": plain(`trim.wood@${PANEL}`, "%"),
  "trim.wood_over": {
    at: PANEL,
    says: (value) => ({ [`trim.wood@${PANEL}`]: of(AIR_AT_85 + value, "%"), "drn.dew.humidity": "85 %" }),
  },
  "trim.carpet_edge_metres": {
    at: "foot-FL",
    says: (value) => ({ "trim.carpet-edge@foot-FL": ["gone"], "trim.carpet-edge.metres@foot-FL": of(value, "m") }),
  },
  "trim.fix_short": {
    at: KIND,
    says: (value) => ({
      [`trim.carpet-fix@${KIND}`]: WANTED - Math.round(WANTED * value),
      [`trim.carpet-fix.wanted@${KIND}`]: WANTED,
    }),
  },
};

const ofWood = { says: { [`trim.wood.board@${PANEL}`]: "wood" } };
export const TRIM_APPLIES: Applies = { "lim.wood": ofWood, "lim.wood-over": ofWood };
