/** What goes between the screen and the printing worker. Types only. */
import type { PrintedSheet, PrintWish } from "../../core/report/index.js";

/** The wish first; then a picture, or nothing, for each one asked for. */
export type ToPress =
  | { readonly is: "wish"; readonly wish: PrintWish }
  | {
      readonly is: "picture";
      readonly picture: { readonly type: string; readonly bytes: Uint8Array<ArrayBuffer> } | undefined;
    };

export type FromPress =
  | { readonly is: "wanted"; readonly hash: string }
  | { readonly is: "drawn"; readonly done: number; readonly of: number }
  | { readonly is: "printed"; readonly sheet: PrintedSheet }
  | { readonly is: "broke"; readonly says: string };
