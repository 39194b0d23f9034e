/** Which screen an address shows. The car list comes at once, every other screen when it is first opened. */
import type { ComponentType } from "preact";
import type { ParamsOf, RouteName } from "../state/routes.js";
import { Cars } from "./cars.js";
import type { HouseScreen } from "./house-screens.js";
import { lazy, onTheWay } from "./lazy.js";

export interface ScreenProps<Name extends RouteName> {
  readonly params: ParamsOf<Name>;
}

type Screens = { readonly [Name in RouteName]: ComponentType<ScreenProps<Name>> };

const loadWay = () => import("./on-the-way.js");
const Round = onTheWay(() => loadWay().then((way) => way.Round));
const Point = onTheWay(() => loadWay().then((way) => way.Point));

const ofHouse = <Name extends HouseScreen>(name: Name): ComponentType<ScreenProps<Name>> =>
  lazy(() => import("./house-screens.js").then(({ HOUSE_SCREENS }) => HOUSE_SCREENS[name]()));

export const SCREENS: Screens = {
  cars: Cars,
  demo: lazy(() => import("./demo.js").then((file) => file.Demo)),
  "new-car": onTheWay(() => loadWay().then((way) => way.NewCar)),
  car: onTheWay(() => loadWay().then((way) => way.Car)),
  facts: lazy(() => import("./facts.js").then((file) => file.Facts)),
  limits: lazy(() => import("./limits.js").then((file) => file.Limits)),
  limit: lazy(() => import("./limit.js").then((file) => file.LimitScreen)),
  places: lazy(() => import("./places.js").then((file) => file.Places)),
  "car-file": lazy(() => import("./car-file.js").then((file) => file.CarFile)),
  wearing: lazy(() => import("./wearing.js").then((file) => file.WearingScreen)),
  wear: lazy(() => import("./wear.js").then((file) => file.Wear)),
  "new-visit": onTheWay(() => loadWay().then((way) => way.NewVisit)),
  visit: lazy(() => import("./visit.js").then((file) => file.Visit)),
  round: Round,
  point: Point,
  where: lazy(() => import("./where.js").then((file) => file.Where)),
  find: lazy(() => import("./find.js").then((file) => file.Find)),
  sound: lazy(() => import("./heard.js").then((file) => file.HeardScreen)),
  reading: lazy(() => import("./reading.js").then((file) => file.Reading)),
  findings: lazy(() => import("./findings.js").then((file) => file.Findings)),
  finding: lazy(() => import("./finding.js").then((file) => file.Finding)),
  "off-list": lazy(() => import("./off-list.js").then((file) => file.OffListScreen)),
  work: lazy(() => import("./work.js").then((file) => file.Work)),
  job: lazy(() => import("./job.js").then((file) => file.Job)),
  part: lazy(() => import("./part.js").then((file) => file.PartScreen)),
  plan: lazy(() => import("./planning.js").then((file) => file.Planning)),
  viewing: lazy(() => import("./viewing-page.js").then((file) => file.ViewingPage)),
  "hand-over": lazy(() => import("./hand-over.js").then((file) => file.HandOver)),
  cautions: lazy(() => import("./cautions.js").then((file) => file.Cautions)),
  gate: lazy(() => import("./gate.js").then((file) => file.Gate)),
  differ: lazy(() => import("./differ.js").then((file) => file.Differ)),
  "judge-again": lazy(() => import("./judge-again.js").then((file) => file.JudgeAgain)),
  history: lazy(() => import("./history.js").then((file) => file.History)),
  "visit-file": lazy(() => import("./visit-file.js").then((file) => file.VisitFile)),
  picture: lazy(() => import("./picture.js").then((file) => file.Picture)),
  marks: lazy(() => import("./marks.js").then((file) => file.Marks)),
  beside: lazy(() => import("./beside.js").then((file) => file.Beside)),
  pictures: lazy(() => import("./pictures.js").then((file) => file.Pictures)),
  camera: lazy(() => import("./camera.js").then((file) => file.CameraScreen)),
  "visit-reckoner": lazy(() => import("./reckoner.js").then((file) => file.VisitReckoner)),
  "visit-reckoning": lazy(() => import("./reckoning.js").then((file) => file.VisitReckoning)),
  sheets: ofHouse("sheets"),
  sheet: ofHouse("sheet"),
  "new-sheet": ofHouse("new-sheet"),
  "sheet-work": ofHouse("sheet-work"),
  "sheet-list": ofHouse("sheet-list"),
  "sheet-item": ofHouse("sheet-item"),
  "sheet-try": ofHouse("sheet-try"),
  "sheet-difference": ofHouse("sheet-difference"),
  settings: ofHouse("settings"),
  files: ofHouse("files"),
  gauges: ofHouse("gauges"),
  reckoner: ofHouse("reckoner"),
  reckoning: ofHouse("reckoning"),
  install: ofHouse("install"),
  about: ofHouse("about"),
};

/** Fetches the round ahead, so that the first press after the car list waits for nothing. */
export const preloadRound = (): void => {
  Round.preload();
  Point.preload();
};
