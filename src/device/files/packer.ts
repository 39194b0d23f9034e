/** Packs and opens copies in workers, one for each, so that no screen waits. Refuses to know ZIP and locks itself. */
import type { Packer } from "../../core/record/files.js";
import { fail, ok } from "../../core/terms/index.js";
import type { PackAnswer, PackRequest } from "./messages.js";

/** What is needed of a worker; a test hands in its own. */
export interface PackWorker {
  postMessage(message: PackRequest, transfer: ArrayBuffer[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<PackAnswer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

type Is = PackAnswer["is"];
type Answer<Kind extends Is> = Extract<PackAnswer, { readonly is: Kind }>;

/** One question at a time to one worker. */
function asking(worker: PackWorker, tell: (done: number, all: number) => void = () => undefined) {
  let turn: Promise<unknown> = Promise.resolve();
  const ask = <Kind extends Is>(request: PackRequest, ...wanted: readonly Kind[]): Promise<Answer<Kind>> => {
    const asked = turn.then(
      () =>
        new Promise<Answer<Kind>>((resolve, reject) => {
          worker.onerror = (event) => reject(new Error(event.message));
          worker.onmessage = ({ data }) => {
            if (data.is === "far") tell(data.done, data.all);
            else if ((wanted as readonly Is[]).includes(data.is)) resolve(data as Answer<Kind>);
            else reject(new Error(data.is === "broke" ? data.says : `Answered ${data.is}`));
          };
          worker.postMessage(request, transferable(request));
        }),
    );
    turn = asked.catch(() => undefined);
    return asked;
  };
  return ask;
}

/** Bytes go over whole, not as another copy in memory. */
const transferable = (request: PackRequest): ArrayBuffer[] =>
  request.do === "add"
    ? request.pieces.flatMap((piece) =>
        typeof piece !== "string" && piece.byteLength === piece.buffer.byteLength ? [piece.buffer] : [],
      )
    : [];

/** Starts workers as they are needed. */
export function packerWith(makeWorker: () => PackWorker): Packer<File> {
  return {
    pack(name, passphrase) {
      const worker = makeWorker();
      const ask = asking(worker);
      /** A worker that broke is of no more use, whoever asked. */
      const orEnd = <Came>(work: Promise<Came>): Promise<Came> =>
        work.catch((error: unknown) => {
          worker.terminate();
          throw error;
        });
      const begun = orEnd(ask({ do: "begin", name, ...(passphrase ? { passphrase } : {}) }, "begun"));
      begun.catch(() => undefined);
      return {
        async add(entry, pieces) {
          await begun;
          const { bytes, sha256 } = await orEnd(ask({ do: "add", name: entry, pieces: [...pieces] }, "added"));
          return { bytes, sha256 };
        },
        async end() {
          await begun;
          const { file } = await orEnd(ask({ do: "end" }, "ended"));
          worker.terminate();
          return file;
        },
        stop: () => worker.terminate(),
      };
    },
    async open(file, passphrase, tell) {
      const worker = makeWorker();
      const ask = asking(worker, tell);
      const close = (): void => worker.terminate();
      try {
        const answer = await ask({ do: "open", file, ...(passphrase ? { passphrase } : {}) }, "opened", "refused");
        if (answer.is === "opened") {
          const { manifest, log } = answer;
          const blob = async (hash: string) => (await ask({ do: "blob", hash }, "blob")).blob;
          return ok({ manifest, log, blob, close });
        }
        close();
        return fail(...answer.problems);
      } catch (error) {
        close();
        throw error;
      }
    },
  };
}
