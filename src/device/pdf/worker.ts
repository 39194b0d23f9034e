/** The printing worker: takes one task, asks for its pictures one after the other, answers with what it made. */
import type { PaperPicture } from "../../core/report/index.js";
import bold from "./face/leadlamp-sheet-bold.ttf?url";
import regular from "./face/leadlamp-sheet-regular.ttf?url";
import { makePage } from "./make-page.js";
import { makeSheet } from "./make-sheet.js";
import type { FromPress, PressTask, ToPress } from "./messages.js";
import type { Faces } from "./pen.js";
import { toPaper } from "./to-paper.js";

const tell = (message: FromPress, transfer: ArrayBuffer[] = []): void => self.postMessage(message, { transfer });
const onProgress = (done: number, of: number): void => tell({ is: "drawn", done, of });

async function fetched(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`The printing face was not there (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function faces(): Promise<Faces> {
  const [plain, heavy] = await Promise.all([fetched(regular), fetched(bold)]);
  return { regular: plain, bold: heavy };
}

/** Pictures are asked for one at a time, so one answer waits at most. */
let answered: ((picture: PaperPicture | undefined) => void) | undefined;

async function pictureOf(hash: string, most: number): Promise<PaperPicture | undefined> {
  const picture = await new Promise<PaperPicture | undefined>((resolve) => {
    answered = resolve;
    tell({ is: "wanted", hash });
  });
  return picture && toPaper(picture, most);
}

async function work(task: PressTask): Promise<void> {
  if (task.is === "sheet") {
    const sheet = await makeSheet(task.wish, await faces(), pictureOf, onProgress);
    tell({ is: "printed", sheet }, [sheet.bytes.buffer]);
    return;
  }
  const page = await makePage(task.wish, pictureOf, onProgress);
  tell({ is: "written", page }, [page.bytes.buffer]);
}

self.addEventListener("message", ({ data }: MessageEvent<ToPress>) => {
  if (data.is === "picture") answered?.(data.picture);
  else work(data).catch((error: unknown) => tell({ is: "broke", says: String(error) }));
});
