/** The worker of the sheet editor: one request after the other, each answered under its number. */
import { sheetAnswering } from "./sheet-answers.js";
import type { SheetGoesOn, SheetRequest } from "./sheet-messages.js";

const answer = sheetAnswering();
self.addEventListener("message", ({ data }: MessageEvent<SheetRequest>) => {
  const goesOn = { id: data.id, goesOn: true } satisfies SheetGoesOn;
  void answer(data, () => self.postMessage(goesOn)).then((came) => self.postMessage(came));
});
