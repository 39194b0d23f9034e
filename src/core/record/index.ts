/** The door of the record: entries, folds, drafts, merging, journal lines, and what is asked of a store. */
export type * from "./contract.js";
export {
  draftCar,
  draftFact,
  draftHouseSheet,
  draftLimit,
  draftName,
  draftNoLimit,
  draftPerson,
  draftPlace,
  draftSameCar,
  draftSameOccasion,
} from "./draft.js";
export * from "./draft-visit.js";
export { foldCar } from "./fold-car.js";
export { foldHouse } from "./fold-house.js";
export { foldStep } from "./fold-step.js";
export { ALL_FIELDS, foldVisit } from "./fold-visit.js";
export * from "./identity.js";
export { replySlot } from "./kinds.js";
export { FOLD_VERSION } from "./ledger.js";
export { type Merged, merge } from "./merge.js";
export { sameReply } from "./same-value.js";
export type * from "./store.js";
export type { CarSummary, OtherSummary, Summary, VisitSummary } from "./summary.js";
export * from "./time.js";
export { draftErase, draftRedo, draftUndo, historyOf, type Past, redoable, type Step, undoable } from "./undo.js";
