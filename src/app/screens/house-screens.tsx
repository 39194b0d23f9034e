/**
 * The screens of what the house keeps for all its cars, and of the app itself: a table of its own, so that the way to the
 * first reply carries none of their files' names.
 */
import type { ComponentType } from "preact";
import type { RouteName } from "../state/routes.js";
import type { ScreenProps } from "./screens.js";

type Fetched<Name extends RouteName> = () => Promise<ComponentType<ScreenProps<Name>>>;
type HouseScreen =
  | ("sheets" | "sheet" | "new-sheet" | "sheet-work" | "sheet-list" | "sheet-item" | "sheet-try" | "sheet-difference")
  | ("settings" | "files" | "gauges" | "reckoner" | "reckoning" | "install" | "about");

export const HOUSE_SCREENS: { readonly [Name in HouseScreen]: Fetched<Name> } = {
  sheets: () => import("./sheets.js").then((file) => file.Sheets),
  sheet: () => import("./sheet.js").then((file) => file.SheetScreen),
  "new-sheet": () => import("./new-sheet.js").then((file) => file.NewSheet),
  "sheet-work": () => import("./sheet-work.js").then((file) => file.SheetWorkScreen),
  "sheet-list": () => import("./sheet-list.js").then((file) => file.SheetList),
  "sheet-item": () => import("./sheet-item.js").then((file) => file.SheetItem),
  "sheet-try": () => import("./sheet-try.js").then((file) => file.SheetTry),
  "sheet-difference": () => import("./sheet-difference.js").then((file) => file.SheetDifference),
  settings: () => import("./settings.js").then((file) => file.SettingsScreen),
  files: () => import("./files.js").then((file) => file.Files),
  gauges: () => import("./gauges.js").then((file) => file.Gauges),
  reckoner: () => import("./reckoner.js").then((file) => file.Reckoner),
  reckoning: () => import("./reckoning.js").then((file) => file.ReckoningScreen),
  install: () => import("./install.js").then((file) => file.Install),
  about: () => import("./about.js").then((file) => file.About),
};
