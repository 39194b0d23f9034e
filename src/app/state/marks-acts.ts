/** What a person draws over a picture, each as one act of the journal. Measures nothing. */
import { draftMark, type PictureMark } from "../../core/record/index.js";
import type { Journal } from "./journal.js";
import { act } from "./reply-acts.js";

/** Draws a new mark, under a random name of its own. */
export const drawMark = (journal: Journal, visit: string, blob: string, drawn: PictureMark): Promise<boolean> =>
  act(journal, visit, "an-entry", (one, state) => [draftMark(one, state, blob, one.nonce(), drawn)]);

/** Takes a mark back; its name is not used again. */
export const removeMark = (journal: Journal, visit: string, blob: string, mark: string): Promise<boolean> =>
  act(journal, visit, "an-entry", (one, state) => [draftMark(one, state, blob, mark, null)]);
