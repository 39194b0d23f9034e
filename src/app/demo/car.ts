/** The demo's car: how it is built, its maker's figures, its own places and their names. Knows no visit. */
import type { FactValue } from "../../core/record/index.js";
import type { CarLimit, PlaceDef } from "../../core/sheet/run.js";
import { MAKERS_NOTES } from "./names.js";

export const FACTS: Readonly<Record<string, FactValue>> = {
  brakes: "outboard",
  "wheel-fixing": "centre-lock",
  driven: "rear",
  "tyre-sizes": "differ-front-rear",
  steering: "rack",
  "steering-wheel": 350,
  abs: false,
  "first-used": 1992,
  country: "gb",
  seat: "right",
  floor: "glass-fibre",
};

const sheet = (number: number): string => `${MAKERS_NOTES}, sheet ${number} (demo)`;

/** The car's own limits book. The front hubs are of another kind than the rear ones, so their default stands. */
export const MAKERS_FIGURES: readonly CarLimit[] = [
  ...(["RL", "RR"] as const).map(
    (place): CarLimit => ({
      limit: "lim.float-unit",
      place,
      value: "0.08",
      unit: "mm",
      grade: "major",
      basis: "maker",
      source: sheet(5),
    }),
  ),
  { limit: "lim.disc-runout", value: "0.08", unit: "mm", grade: "minor", basis: "maker", source: sheet(9) },
  {
    limit: "lim.pad",
    bands: { minor: "4", major: "3" },
    unit: "mm",
    basis: "maker",
    source: sheet(9),
  },
];

/** The drain its maker drilled behind each seat, above the short outrigger. */
const drain = (side: "L" | "R", at: readonly [number, number]): PlaceDef => ({
  id: `drain-demo-seat-${side}`,
  kind: "drain",
  in: `behind-seat-${side}`,
  relations: {
    side: `side-${side}`,
    below: `outrigger-${side}-3`,
    ...(side === "L" ? { opposite: "drain-demo-seat-R" } : {}),
  },
  at: [...at],
});
export const OWN_PLACES: readonly PlaceDef[] = [drain("L", [63, 26]), drain("R", [63, 74])];

/** What this car's people call its places. */
export const PLACE_NAMES: Readonly<Record<string, string>> = {
  "drain-demo-seat-L": "drain behind the passenger's seat",
  "drain-demo-seat-R": "drain behind the driver's seat",
  "outrigger-L-3": "short outrigger by the tank, left",
};

export const CAR_NOTE = "Spare key and the red folder with the papers are in the glove box.";
