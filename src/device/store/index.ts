/** The door of the store: the record kept in IndexedDB, and the randomness its entries need. */
export { hashOf, makeAct, makeNonce } from "./chance.js";
export { openStore, type StoreOptions } from "./open-store.js";
