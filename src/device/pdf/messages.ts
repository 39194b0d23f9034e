/** What goes between the screen and the printing worker. Types only. */
import type { MadePage, PageWish, PaperPicture, PrintedSheet, PrintWish } from "../../core/report/index.js";

/** What is to be made: a printed sheet, or a page file. */
export type PressTask =
  | { readonly is: "sheet"; readonly wish: PrintWish }
  | { readonly is: "page"; readonly wish: PageWish };

/** The task first; then a picture, or nothing, for each one asked for. */
export type ToPress = PressTask | { readonly is: "picture"; readonly picture: PaperPicture | undefined };

export type PressMade =
  | { readonly is: "printed"; readonly sheet: PrintedSheet }
  | { readonly is: "written"; readonly page: MadePage };
export type FromPress =
  | PressMade
  | { readonly is: "wanted"; readonly hash: string }
  | { readonly is: "drawn"; readonly done: number; readonly of: number }
  | { readonly is: "broke"; readonly says: string };
