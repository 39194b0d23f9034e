/**
 * Prints in a worker of its own, one for each task: it is thrown away with everything it held, finished or stopped.
 * Hands it one picture at a time, when it asks. Refuses to draw anything itself.
 */
import type { PictureSource, Printing, Progress, SheetPrinter } from "../../core/report/index.js";
import type { FromPress, PressMade, PressTask, ToPress } from "./messages.js";

/** What the printer needs of a worker; a test hands in its own. */
export interface PressWorker {
  postMessage(message: ToPress, transfer: ArrayBuffer[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromPress>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** One task in a worker; `taken` picks what was made out of its last message. */
function run<Made>(
  worker: PressWorker,
  task: PressTask,
  pictures: PictureSource,
  onProgress: Progress,
  taken: (made: PressMade) => Made | undefined,
): Printing<Made> {
  let isOver = false;
  let end: (made: Made | undefined) => void = () => undefined;
  const done = new Promise<Made | undefined>((resolve, reject) => {
    const over = (settle: () => void): void => {
      if (isOver) return;
      isOver = true;
      worker.terminate();
      settle();
    };
    end = (made) => over(() => resolve(made));
    const broke = (says: string): void => over(() => reject(new Error(says)));
    const fetchPicture = async (hash: string): Promise<void> => {
      // One that cannot be read is told on the sheet like one that is not there.
      const picture = await pictures(hash).catch(() => undefined);
      if (!isOver) worker.postMessage({ is: "picture", picture }, picture ? [picture.bytes.buffer] : []);
    };
    worker.onmessage = ({ data }) => {
      if (data.is === "wanted") void fetchPicture(data.hash);
      else if (data.is === "broke") broke(data.says);
      else if (data.is !== "drawn") end(taken(data));
      else if (!isOver) onProgress(data.done, data.of);
    };
    worker.onerror = (event) => broke(event.message || "The printing worker could not be started");
    worker.postMessage(task, []);
  });
  return { done, stop: () => end(undefined) };
}

export function startSheetPrinter(makeWorker: () => PressWorker): SheetPrinter {
  return {
    print: (wish, pictures, onProgress) =>
      run(makeWorker(), { is: "sheet", wish }, pictures, onProgress, (made) =>
        made.is === "printed" ? made.sheet : undefined,
      ),
    page: (wish, pictures, onProgress) =>
      run(makeWorker(), { is: "page", wish }, pictures, onProgress, (made) =>
        made.is === "written" ? made.page : undefined,
      ),
  };
}
