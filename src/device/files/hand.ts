/**
 * Hands a finished file to the share sheet where the phone has one for its type, else to the downloads.
 * Refuses to build files: by the time of the tap the file must be there, or the browser forgets the tap.
 */
import type { FileContent, Handed, ReadyFile } from "../../core/record/files.js";

/** What is needed of the browser; a test hands in its own. */
export interface Surroundings {
  readonly navigator: {
    canShare?(data: { files: File[] }): boolean;
    share?(data: { files: File[]; title: string }): Promise<void>;
  };
  readonly document: Pick<Document, "createElement" | "body">;
  readonly urls: { createObjectURL(file: Blob): string; revokeObjectURL(url: string): void };
  later(act: () => void, ms: number): void;
}

/** Long enough for the slowest phone to have opened the download before its address is taken back. Own choice. */
const REVOKE_AFTER_MS = 60_000;

function download(file: File, { document, urls, later }: Surroundings): Handed {
  const url = urls.createObjectURL(file);
  const link = document.createElement("a");
  link.href = url;
  link.download = file.name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  later(() => urls.revokeObjectURL(url), REVOKE_AFTER_MS);
  return "downloaded";
}

const nameOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "name" in error ? String(error.name) : "";

/** A file ready to be handed on at a tap. */
export function readyFile(content: FileContent | File, surroundings: Surroundings): ReadyFile {
  const file = content instanceof File ? content : new File([content.bytes], content.name, { type: content.type });
  const { navigator } = surroundings;
  const canShare = navigator.share !== undefined && navigator.canShare?.({ files: [file] }) === true;
  return {
    hand: async () => {
      if (!canShare || !navigator.share) return download(file, surroundings);
      try {
        await navigator.share({ files: [file], title: content.name });
        return "shared";
      } catch (error) {
        if (nameOf(error) === "AbortError") return "stopped";
        if (nameOf(error) === "NotAllowedError") return "tap-again";
        return download(file, surroundings);
      }
    },
  };
}
