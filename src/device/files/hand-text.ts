/**
 * Hands a text to the share sheet where the phone has one, else to the clipboard. Refuses to write the text: by the time
 * of the tap it must be there, or the browser forgets the tap.
 */
import type { TextHanded } from "../../core/record/files.js";

/** What is needed of the browser; a test hands in its own. */
export interface TextSurroundings {
  share?(data: { text: string }): Promise<void>;
  readonly clipboard?: { writeText(text: string): Promise<void> } | undefined;
}

const nameOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "name" in error ? String(error.name) : "";

/** To the share sheet; where there is none, or it will not take it, to the clipboard. */
export async function shareText(text: string, browser: TextSurroundings): Promise<TextHanded> {
  if (!browser.share) return copyText(text, browser);
  try {
    await browser.share({ text });
    return "shared";
  } catch (error) {
    return nameOf(error) === "AbortError" ? "stopped" : copyText(text, browser);
  }
}

export async function copyText(text: string, { clipboard }: TextSurroundings): Promise<TextHanded> {
  try {
    if (!clipboard) return "failed";
    await clipboard.writeText(text);
    return "copied";
  } catch {
    // A page that may not write to the clipboard: the text is marked and copied by hand.
    return "failed";
  }
}
