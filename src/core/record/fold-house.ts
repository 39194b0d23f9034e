/** What this house keeps for all its cars: own sheets and those under work, gauges, people, terms, days worked, suppliers. Refuses to know any car. */
import type { HouseState, Logged } from "./contract.js";
import { fold, type Parts, setOrDrop } from "./fold.js";
import { HOUSE_KINDS } from "./house-kinds.js";
import { HOUSE } from "./identity.js";
import { standsIn } from "./standing.js";

const PARTS: Parts<HouseState> = {
  of: "house",
  kinds: HOUSE_KINDS,
  begins: "",
  empty: () => ({
    of: "house",
    sheets: new Map(),
    gauges: new Map(),
    terms: [],
    calendar: [],
    suppliers: new Map(),
    drafts: new Map(),
    draftItems: new Map(),
    draftOrders: new Map(),
  }),
  copy: (house) => ({
    ...house,
    sheets: new Map(house.sheets),
    gauges: new Map(house.gauges),
    suppliers: new Map(house.suppliers),
    drafts: new Map(house.drafts),
    draftItems: new Map(house.draftItems),
    draftOrders: new Map(house.draftOrders),
  }),
  fill: {
    sheet: (house, ledger, slot, id) =>
      setOrDrop(
        house.sheets,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.sheet" ? e.body.sheet : null)),
      ),
    terms: (house, ledger, slot) => {
      house.terms = standsIn(ledger, slot, (e) => (e.kind === "house.terms" ? e.body.terms : null));
    },
    calendar: (house, ledger, slot) => {
      house.calendar = standsIn(ledger, slot, (e) => (e.kind === "house.calendar" ? e.body.calendar : null));
    },
    supplier: (house, ledger, slot, id) =>
      setOrDrop(
        house.suppliers,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.supplier" ? e.body.supplier : null)),
      ),
    draft: (house, ledger, slot, id) =>
      setOrDrop(
        house.drafts,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.draft" ? e.body.base : null)),
      ),
    // One taken out of its sheet stands, as that: without it the edition below would show through.
    item: (house, ledger, slot, id) =>
      setOrDrop(
        house.draftItems,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.draft-item" ? { to: e.body.to } : null)),
      ),
    order: (house, ledger, slot, id) =>
      setOrDrop(
        house.draftOrders,
        id,
        standsIn(ledger, slot, (e) => (e.kind === "house.draft-order" ? e.body.order : null)),
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
