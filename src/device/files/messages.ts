/** What goes to the packing worker and comes back. Types only. */
import type { CopyManifest, KeptBytes, Logged } from "../../core/record/index.js";
import type { Problem } from "../../core/terms/index.js";

/** Each worker writes one archive, or opens one copy. */
export type PackRequest =
  | { readonly do: "begin"; readonly name: string; readonly passphrase?: string }
  | { readonly do: "add"; readonly name: string; readonly pieces: readonly (string | Uint8Array<ArrayBuffer>)[] }
  | { readonly do: "end" }
  | { readonly do: "open"; readonly file: File; readonly passphrase?: string }
  | { readonly do: "blob"; readonly hash: string };

export type PackAnswer =
  | { readonly is: "begun" }
  | { readonly is: "added"; readonly bytes: number; readonly sha256: string }
  | { readonly is: "ended"; readonly file: File }
  | { readonly is: "opened"; readonly manifest: CopyManifest; readonly log: readonly Logged[] }
  | { readonly is: "refused"; readonly problems: readonly Problem[] }
  | { readonly is: "blob"; readonly blob: KeptBytes }
  | { readonly is: "far"; readonly done: number; readonly all: number }
  | { readonly is: "broke"; readonly says: string };
