/** Drafts of what is said of a kept picture, each naming what it replaces. Refuses to touch the picture. */
import type { Act, Draft, IdText, VisitState } from "./contract.js";
import { noMixing, standingIds } from "./draft.js";
import { draftBy } from "./draft-later.js";
import { foldPictures, type PicturesState } from "./fold-pictures.js";
import { type PictureMark, pictureKey } from "./picture-bodies.js";
import { PICTURE_KINDS } from "./picture-kinds.js";

/** What is said so far, of a visit as it stands. */
const saidIn = (visit: VisitState): PicturesState => foldPictures(visit.ledger.log.values());

/** Draws a mark over a picture, or draws it anew, under the name it keeps; null takes it back. */
export function draftMark(act: Act, visit: VisitState, blob: string, mark: string, drawn: PictureMark | null): Draft {
  const picture = pictureKey(blob);
  const replaces = standingIds(saidIn(visit), `mark|${picture}/${mark}`);
  return draftBy(PICTURE_KINDS, act, visit.stream, "picture.mark", { picture, mark, drawn, replaces });
}

/** Says which earlier picture this one was taken after. */
export function draftAfter(act: Act, visit: VisitState, blob: string, after: IdText): Draft {
  noMixing(visit.stream, [after]);
  const picture = pictureKey(blob);
  const replaces = standingIds(saidIn(visit), `after|${picture}`);
  return draftBy(PICTURE_KINDS, act, visit.stream, "picture.after", { picture, after, replaces });
}
