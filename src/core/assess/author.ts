/** The door for who proves a sheet: its cases run against what it concludes. Never on the way to the first reply. */
export {
  type CaseFailure,
  type CaseRan,
  caseReplies,
  keyOfFailure,
  NOTHING_SAID,
  type Proving,
  proving,
  runCase,
} from "./cases.js";
