/** The door of handing back: complaints and their answers, work done, what stands against it, what is due afterwards. */
export { type Against, type HandingBack, mayBeDriven, mayBeMoved, standsAgainst, type Weight } from "./against.js";
export { type ComplaintStands, complaintsOf, type HeardIn, isOpen, openComplaints } from "./complaints.js";
export { type Drives, type Recheck, rechecksOf } from "./rechecks.js";
export {
  type AnsweredBadly,
  type AnswerTold,
  type AskedOf,
  type Asking,
  type PointAt,
  type SecondLookAt,
  type SheetSays,
  type WorkTold,
  worksTold,
} from "./works.js";
