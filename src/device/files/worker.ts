/** The packing worker: one archive written, or one copy opened. Squeezing, hashing and locking are done here. */
import type { OpenedCopy, Packing } from "../../core/record/files.js";
import type { PackAnswer, PackRequest } from "./messages.js";
import { openCopy } from "./open.js";
import { startPack } from "./pack.js";

let packing: Packing<File> | undefined;
let copy: OpenedCopy | undefined;
/** How far it has come is told a few times a second. */
const TELL_EVERY_MS = 100;
let told = 0;

const say = (answer: PackAnswer): void => self.postMessage(answer);
function tell(done: number, all: number): void {
  const now = performance.now();
  if (now - told < TELL_EVERY_MS) return;
  told = now;
  say({ is: "far", done, all });
}

async function answer(asked: PackRequest): Promise<PackAnswer> {
  if (asked.do === "begin") {
    packing = startPack(asked.name, asked.passphrase);
    return { is: "begun" };
  }
  if (asked.do === "open") {
    const opened = await openCopy(asked.file, asked.passphrase, tell);
    if (!opened.ok) return { is: "refused", problems: opened.problems };
    copy = opened.value;
    return { is: "opened", manifest: copy.manifest, log: copy.log };
  }
  if (asked.do === "blob") {
    if (!copy) throw new Error("No copy is open");
    return { is: "blob", blob: await copy.blob(asked.hash) };
  }
  if (!packing) throw new Error("No archive was begun");
  if (asked.do === "end") return { is: "ended", file: await packing.end() };
  return { is: "added", ...(await packing.add(asked.name, asked.pieces)) };
}

self.addEventListener("message", ({ data }: MessageEvent<PackRequest>) => {
  answer(data).then(say, (error: unknown) => say({ is: "broke", says: String(error) }));
});
