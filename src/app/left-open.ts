/** After a start: what the phone ended in the middle is gone back to. Loaded only when something was left open. */
import type { App } from "./state/app.js";
import { isAliveElsewhere, isCameraOpen } from "./state/left-open.js";
import { finishSound, isSoundOpen } from "./state/sound-slices.js";

/** A recording that was cut off becomes a sound of its point, as far as it was heard. */
export async function keepCutSound(app: App, found: unknown): Promise<void> {
  if (isSoundOpen(found) && !(await isAliveElsewhere("sound"))) await finishSound(app, found);
}

/** Goes back to the camera, unless another window has it open. */
export async function backToCamera(app: App, found: unknown): Promise<void> {
  const hence = app.router.fromHere();
  if (!isCameraOpen(found) || (await isAliveElsewhere("camera"))) return;
  if (location.hash !== found.href) hence.go(found.href);
}
