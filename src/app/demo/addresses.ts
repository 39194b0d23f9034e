/** One address of every screen in the demo, for those who open them all. Knows the scenario's names only. */
import { hrefOf, paramOf, ROUTES, type RouteName } from "../state/routes.js";

import { DEMO_CAR, DEMO_PICTURE, DEMO_THIRD } from "./names.js";

const PARAMS: Readonly<Record<string, string>> = {
  car: paramOf(DEMO_CAR),
  visit: paramOf(DEMO_THIRD),
  limit: "lim.float-unit",
  state: "w8-off",
  place: "RR",
  point: "whl.float",
  field: "play",
  series: "whl.float~play",
  fault: "whl.race",
  finding: "new",
  of: "brake_imbalance",
  job: "job.whl.bearing",
  part: "hub-nut",
  page: "dates",
  gate: "gate.no-road",
  picture: DEMO_PICTURE,
  aim: "point~w8-off~RR~whl.float",
  sheet: "whl",
  list: "points",
  item: "whl.float",
};

interface Shown {
  readonly name: RouteName;
  readonly href: string;
}

/** A point at which the demo heard both sides, and last time. */
const HEARD = { ...PARAMS, state: "w7-hang", place: "RR", point: "whl.listen" };

/** Pages of a plan; each is a screen of its own. */
const PLANNED = ["budget", "estimate", "scope", "intake", "decisions", "release", "note"];

/** Every route of the table with an address that shows something in the demo; `demo` itself brings it in. */
export const demoAddresses = (): readonly Shown[] =>
  // The table's own keys.
  (Object.keys(ROUTES) as RouteName[]).flatMap((name): readonly Shown[] =>
    name === "plan"
      ? PLANNED.map((page) => ({ name, href: hrefOf({ name, params: { ...PARAMS, page } }) }))
      : [{ name, href: hrefOf({ name, params: name === "sound" ? HEARD : PARAMS }) }],
  );
