/**
 * The screens of a car and of a visit that nobody opens before the first reply, and few do in a minute: a table of its own,
 * as house-screens.tsx is one, so that the way to the first reply carries none of their files' names.
 */
import type { ComponentType } from "preact";
import type { RouteName } from "../state/routes.js";
import type { ScreenProps } from "./screens.js";

type Fetched<Name extends RouteName> = () => Promise<ComponentType<ScreenProps<Name>>>;
export type SeldomScreen =
  | ("facts" | "limits" | "limit" | "places" | "car-file" | "wearing" | "wear" | "hand-over" | "what-now" | "viewing")
  | ("differ" | "judge-again" | "history" | "visit-file" | "visit-reckoner" | "visit-reckoning")
  | ("picture" | "marks" | "beside" | "pictures");

export const SELDOM_SCREENS: { readonly [Name in SeldomScreen]: Fetched<Name> } = {
  facts: () => import("./facts.js").then((file) => file.Facts),
  limits: () => import("./limits.js").then((file) => file.Limits),
  limit: () => import("./limit.js").then((file) => file.LimitScreen),
  places: () => import("./places.js").then((file) => file.Places),
  "car-file": () => import("./car-file.js").then((file) => file.CarFile),
  wearing: () => import("./wearing.js").then((file) => file.WearingScreen),
  wear: () => import("./wear.js").then((file) => file.Wear),
  differ: () => import("./differ.js").then((file) => file.Differ),
  "judge-again": () => import("./judge-again.js").then((file) => file.JudgeAgain),
  history: () => import("./history.js").then((file) => file.History),
  "visit-file": () => import("./visit-file.js").then((file) => file.VisitFile),
  picture: () => import("./picture.js").then((file) => file.Picture),
  marks: () => import("./marks.js").then((file) => file.Marks),
  beside: () => import("./beside.js").then((file) => file.Beside),
  pictures: () => import("./pictures.js").then((file) => file.Pictures),
  "visit-reckoner": () => import("./reckoner.js").then((file) => file.VisitReckoner),
  "visit-reckoning": () => import("./reckoning.js").then((file) => file.VisitReckoning),
  viewing: () => import("./viewing-page.js").then((file) => file.ViewingPage),
  "hand-over": () => import("./hand-over.js").then((file) => file.HandOver),
  "what-now": () => import("./what-now.js").then((file) => file.WhatNow),
};
