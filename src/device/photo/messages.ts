/** What the page and the picture worker say to each other. Types only. */
import type { PictureOutcome } from "../../core/record/photo.js";

export interface KeepRequest {
  readonly id: number;
  readonly source: Blob;
}

export type KeepAnswer =
  | { readonly id: number; readonly outcome: PictureOutcome }
  /** The source could not be read any more. */
  | { readonly id: number; readonly unreadable: string };
