/** What this house keeps for all its cars: own sheets, gauges and people. Refuses to know any car. */
import type { HouseState, Logged } from "./contract.js";
import { fold, type Parts, setOrDrop, step } from "./fold.js";
import { HOUSE } from "./identity.js";
import { standsIn } from "./standing.js";

const PARTS: Parts<HouseState> = {
  of: "house",
  begins: "",
  empty: () => ({ of: "house", sheets: new Map(), gauges: new Map() }),
  copy: (house) => ({ ...house, sheets: new Map(house.sheets), gauges: new Map(house.gauges) }),
  fill: {
    sheet: (house, ledger, slot, id) =>
      setOrDrop(
        house.sheets,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.sheet" ? e.body.sheet : null)),
      ),
    gauge: (house, ledger, slot, id) =>
      setOrDrop(
        house.gauges,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.gauge" ? e.body.gauge : null)),
      ),
  },
  join: (own, folded) => ({ ...own, ...folded, stream: HOUSE }),
};

export const foldHouse = (entries: Iterable<Logged>): HouseState => fold(PARTS, entries);

export const stepHouse = (state: HouseState, logged: Logged): HouseState => step(PARTS, state, logged);
