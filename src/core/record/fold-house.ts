/** What this house keeps for all its cars: own sheets and people. Refuses to know any car. */
import type { HouseState, Ledger, Logged } from "./contract.js";
import { fold, type Own, type Parts, setOrDrop, step } from "./fold.js";
import { standsIn } from "./standing.js";

type House = Own<HouseState>;

const HOUSE: Parts<HouseState> = {
  of: "house",
  begins: "",
  empty: () => ({ of: "house", sheets: new Map() }),
  copy: (house) => ({ ...house, sheets: new Map(house.sheets) }),
  apply: applySlot,
  join: (own, folded) => ({ ...own, ...folded }),
};

export const foldHouse = (entries: Iterable<Logged>): HouseState => fold(HOUSE, entries);

export const stepHouse = (state: HouseState, logged: Logged): HouseState => step(HOUSE, state, logged);

function applySlot(house: House, ledger: Ledger, head: string, rest: string): void {
  if (head !== "sheet") throw new Error(`No part of the house is made of ${head}|${rest}`);
  const sheets = standsIn(ledger, `sheet|${rest}`, (e) => (e.kind === "house.sheet" ? e.body.sheet : null));
  setOrDrop(house.sheets, rest, sheets);
}
