/**
 * Prints in a worker of its own, one for each sheet: it is thrown away with everything it held, finished or stopped.
 * Hands it one picture at a time, when it asks. Refuses to draw anything itself.
 */
import type { PrintedSheet, SheetPrinter } from "../../core/report/index.js";
import type { FromPress, ToPress } from "./messages.js";

/** What the printer needs of a worker; a test hands in its own. */
export interface PressWorker {
  postMessage(message: ToPress, transfer: ArrayBuffer[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromPress>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export function startSheetPrinter(makeWorker: () => PressWorker): SheetPrinter {
  return {
    print(wish, pictures, onProgress) {
      let resolve: (sheet: PrintedSheet | undefined) => void = () => undefined;
      let reject: (error: Error) => void = () => undefined;
      const done = new Promise<PrintedSheet | undefined>((onDone, onBroke) => {
        resolve = onDone;
        reject = onBroke;
      });
      const worker = makeWorker();
      let isOver = false;
      const end = (settle: () => void): void => {
        if (isOver) return;
        isOver = true;
        worker.terminate();
        settle();
      };
      const fetchPicture = async (hash: string): Promise<void> => {
        // One that cannot be read is told on the sheet like one that is not there.
        const picture = await pictures(hash).catch(() => undefined);
        if (!isOver) worker.postMessage({ is: "picture", picture }, picture ? [picture.bytes.buffer] : []);
      };
      worker.onmessage = ({ data }) => {
        switch (data.is) {
          case "wanted":
            void fetchPicture(data.hash);
            break;
          case "drawn":
            if (!isOver) onProgress(data.done, data.of);
            break;
          case "printed":
            end(() => resolve(data.sheet));
            break;
          case "broke":
            end(() => reject(new Error(data.says)));
        }
      };
      worker.onerror = (event) =>
        end(() => reject(new Error(event.message || "The printing worker could not be started")));
      worker.postMessage({ is: "wish", wish }, []);
      return { done, stop: () => end(() => resolve(undefined)) };
    },
  };
}
