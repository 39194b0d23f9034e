/** Asks a person for files through a file input. Refuses to read them. */
import type { PickWish } from "../../core/record/files.js";

/** Opens the browser's own chooser; call inside a tap. Empty when it is closed without choosing. */
export function pickFiles(wish: PickWish, page: Document): Promise<readonly File[]> {
  const input = page.createElement("input");
  input.type = "file";
  input.accept = wish.accept;
  input.multiple = wish.several === true;
  if (wish.camera) input.setAttribute("capture", "environment");
  input.hidden = true;
  // Some engines forget an input that is not part of the page while the camera is open.
  page.body.append(input);
  return new Promise((resolve) => {
    const end = (files: readonly File[]): void => {
      input.remove();
      resolve(files);
    };
    input.addEventListener("change", () => end(Array.from(input.files ?? [])), { once: true });
    input.addEventListener("cancel", () => end([]), { once: true });
    input.click();
  });
}
