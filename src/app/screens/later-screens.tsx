/**
 * The screens nobody needs before the first reply: a table of its own, so that the way there carries none of their files'
 * names. Those of the house and of the app itself stand in house-screens.tsx.
 */
import type { ComponentType } from "preact";
import { HOUSE_SCREENS } from "./house-screens.js";
import type { LaterScreen, ScreenProps } from "./screens.js";

type Fetched<Name extends LaterScreen> = () => Promise<ComponentType<ScreenProps<Name>>>;

export const LATER_SCREENS: { readonly [Name in LaterScreen]: Fetched<Name> } = {
  ...HOUSE_SCREENS,
  demo: () => import("./demo.js").then((file) => file.Demo),
  facts: () => import("./facts.js").then((file) => file.Facts),
  limits: () => import("./limits.js").then((file) => file.Limits),
  limit: () => import("./limit.js").then((file) => file.LimitScreen),
  places: () => import("./places.js").then((file) => file.Places),
  "car-file": () => import("./car-file.js").then((file) => file.CarFile),
  wearing: () => import("./wearing.js").then((file) => file.WearingScreen),
  wear: () => import("./wear.js").then((file) => file.Wear),
  visit: () => import("./visit.js").then((file) => file.Visit),
  where: () => import("./where.js").then((file) => file.Where),
  find: () => import("./find.js").then((file) => file.Find),
  sound: () => import("./heard.js").then((file) => file.HeardScreen),
  reading: () => import("./reading.js").then((file) => file.Reading),
  findings: () => import("./findings.js").then((file) => file.Findings),
  finding: () => import("./finding.js").then((file) => file.Finding),
  "off-list": () => import("./off-list.js").then((file) => file.OffListScreen),
  work: () => import("./work.js").then((file) => file.Work),
  job: () => import("./job.js").then((file) => file.Job),
  part: () => import("./part.js").then((file) => file.PartScreen),
  plan: () => import("./planning.js").then((file) => file.Planning),
  viewing: () => import("./viewing-page.js").then((file) => file.ViewingPage),
  "hand-over": () => import("./hand-over.js").then((file) => file.HandOver),
  "what-now": () => import("./what-now.js").then((file) => file.WhatNow),
  cautions: () => import("./cautions.js").then((file) => file.Cautions),
  gate: () => import("./gate.js").then((file) => file.Gate),
  differ: () => import("./differ.js").then((file) => file.Differ),
  "judge-again": () => import("./judge-again.js").then((file) => file.JudgeAgain),
  history: () => import("./history.js").then((file) => file.History),
  "visit-file": () => import("./visit-file.js").then((file) => file.VisitFile),
  picture: () => import("./picture.js").then((file) => file.Picture),
  marks: () => import("./marks.js").then((file) => file.Marks),
  beside: () => import("./beside.js").then((file) => file.Beside),
  pictures: () => import("./pictures.js").then((file) => file.Pictures),
  camera: () => import("./camera.js").then((file) => file.CameraScreen),
  "visit-reckoner": () => import("./reckoner.js").then((file) => file.VisitReckoner),
  "visit-reckoning": () => import("./reckoning.js").then((file) => file.VisitReckoning),
};
