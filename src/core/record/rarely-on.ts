/**
 * What few sessions need of a store: taking in, erasing, removing. Fetched when first asked for, and always before a
 * transaction begins: that one waits for nothing but its own requests.
 */
export { ALL_KINDS } from "./all-kinds.js";
export { draftErase } from "./draft-erase.js";
export { eraseNamed, removeOn } from "./erase-on.js";
export { faultsIn, receiveOn } from "./receive-on.js";
