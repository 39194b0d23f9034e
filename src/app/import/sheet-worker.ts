/** The worker of the sheet editor: one request after the other, each answered under its number. */
import { sheetAnswering } from "./sheet-answers.js";
import type { SheetRequest } from "./sheet-messages.js";

const answer = sheetAnswering();
self.addEventListener("message", ({ data }: MessageEvent<SheetRequest>) => {
  void answer(data).then((came) => self.postMessage(came));
});
