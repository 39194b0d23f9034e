/** What of copies is for others: made, checked, taken in, compared, deleted for good. Rules: SPEC.md. */
export { claimFault } from "./claim.js";
export { compareLogs } from "./compare.js";
export * from "./copy-made.js";
export * from "./erase-for-good.js";
export * from "./gather.js";
export type { LackingBlob } from "./lacking.js";
export { archiveAtMost, COPY_LIMITS, type CopyLimits, hashIn, isCopyName, JOURNAL, MANIFEST } from "./layout.js";
export * from "./manifest.js";
export * from "./take-in.js";
export { type CopyStamp, writeVolume } from "./write-volume.js";
