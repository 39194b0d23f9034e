/**
 * Deleting for good as one act: refused it changes nothing, done it also drops what lies beside the record (slices of a
 * recording, where one was), and what broke is told as not known. Draws nothing.
 */
import { type Erased, eraseAndLook, type IdText } from "../../core/record/index.js";
import { type Problem, problem } from "../../core/terms/index.js";
import type { App } from "./app.js";
import { actNow } from "./copies.js";
import { isAliveElsewhere, isCameraOpen, readOpen, writeOpen } from "./left-open.js";
import { paramOf } from "./routes.js";
import { forgetSlices, isSoundOpen } from "./sound-slices.js";
import { forgetPoint } from "./where-one-was.js";

export interface EraseWhat {
  readonly streams?: readonly string[];
  readonly ids?: readonly IdText[];
}

/**
 * `refused`: nothing is deleted · `broke`: not known, look again · `done`, with `beside` false where something beside
 * the record could not be dropped.
 */
export type EraseCame =
  | { readonly is: "done"; readonly erased: Erased; readonly beside: boolean }
  | { readonly is: "refused"; readonly problems: readonly Problem[] }
  | { readonly is: "broke"; readonly error: unknown };

type Needs = Pick<App, "store" | "journal" | "phone" | "settings" | "forget">;

/** What lies beside the record of these streams: a recording and a camera left open, where one was, remembered words. */
async function forgetBeside({ store, forget }: Needs, streams: readonly string[]): Promise<void> {
  await forgetSlices(store, streams);
  const names = streams.map(paramOf);
  const camera = await readOpen(store, "camera");
  if (isCameraOpen(camera) && names.some((name) => camera.href.split(/[/?]/).includes(name)))
    await writeOpen(store, "camera", undefined);
  for (const stream of streams) await forgetPoint(store, stream);
  await forget(names);
}

/** Deletes whole streams or single entries for good and looks again. */
export async function eraseNow(app: Needs, what: EraseWhat): Promise<EraseCame> {
  const { store, journal, phone, settings } = app;
  const streams = what.streams ?? [];
  try {
    const heard = await readOpen(store, "sound");
    // Another window would go on keeping what it hears.
    if (isSoundOpen(heard) && streams.includes(heard.visit) && (await isAliveElsewhere("sound")))
      return { is: "refused", problems: [problem("files.recording")] };
    const act = actNow(phone, settings.peek(), journal.summaries.peek() ?? []);
    const erased = await eraseAndLook(store, act, what);
    if (!erased.ok) return { is: "refused", problems: erased.problems };
    const beside = await forgetBeside(app, streams).then(
      () => true,
      () => false,
    );
    return { is: "done", erased: erased.value, beside };
  } catch (error) {
    return { is: "broke", error };
  }
}
