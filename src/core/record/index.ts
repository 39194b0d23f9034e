/** The door of the record: entries, folds, drafts, merging, journal lines, and what is asked of a store. */
export { blobsOf } from "./blobs-of.js";
export { faultsOf } from "./check-logged.js";
export type * from "./contract.js";
export * from "./copy/index.js";
export * from "./decision-bodies.js";
export * from "./decision-line.js";
export * from "./draft.js";
export * from "./draft-car.js";
export * from "./draft-decision.js";
export { draftErase } from "./draft-erase.js";
export * from "./draft-house.js";
export * from "./draft-judged.js";
export * from "./draft-limit-told.js";
export * from "./draft-more.js";
export * from "./draft-pictures.js";
export * from "./draft-plan.js";
export * from "./draft-release.js";
export { draftClaim, draftClaimSeen, draftPapersUntil } from "./draft-viewing.js";
export * from "./draft-visit.js";
export { draftWear } from "./draft-wear.js";
export type { Engine, Mode, WideShelf } from "./engine.js";
export { fetchedFold } from "./fetched-fold.js";
export { foldStep } from "./fold.js";
export { foldCar } from "./fold-car.js";
export { foldHouse } from "./fold-house.js";
export { foldPictures, type NamedMark, type PicturesState } from "./fold-pictures.js";
export { foldPlan } from "./fold-plan.js";
export { ALL_FIELDS, foldVisit } from "./fold-visit.js";
export * from "./house-bodies.js";
export * from "./identity.js";
export { JOURNAL_FORMAT, lineOf, readJournal, writeJournal } from "./journal.js";
export { replySlot } from "./kinds.js";
export { FOLD_VERSION } from "./ledger.js";
export * from "./limit-bodies.js";
export {
  type FigureSaid,
  foldLimitBook,
  keysOf as limitKeysOf,
  type LimitBookState,
  limitLine,
} from "./limit-line.js";
export { figureOf, limitsOf, lookedOn, placesOf } from "./looked.js";
export { goneOn, lookingTimeOf, type TimeLeft, timeLeft, USUAL_MINUTES } from "./looking-time.js";
export * from "./memory-store.js";
export { type Merged, merge } from "./merge.js";
export * from "./picture-bodies.js";
export { placesOnceAdded } from "./places-once.js";
export * from "./plan-bodies.js";
export type * from "./plan-contract.js";
export { jobKey, partKey } from "./plan-keys.js";
export { draftRedo, historyOf, type Past, redoable } from "./redo.js";
export * from "./release-bodies.js";
export { differ, sameReply, sameValue } from "./same-value.js";
export type * from "./sheet-draft-bodies.js";
export type { Head } from "./shelf.js";
export type * from "./store.js";
export { storeOn } from "./store-on.js";
export { NO_ANSWER, NoStorage, storageTrouble, withTries } from "./store-trouble.js";
export * from "./summary.js";
export * from "./time.js";
export * from "./to-assess.js";
export { draftUndo, type Step, undoable } from "./undo.js";
export * from "./viewing-bodies.js";
export { Watched } from "./watched.js";
export * from "./wear-bodies.js";
export { wearKey } from "./wear-kinds.js";
