/** Which screen an address shows. The car list comes at once, every other screen when it is first opened. */
import type { ComponentType } from "preact";
import type { ParamsOf, RouteName } from "../state/routes.js";
import { Cars } from "./cars.js";
import type { HouseScreen } from "./house-screens.js";
import { lazy, onTheWay } from "./lazy.js";
import type { SeldomScreen } from "./seldom-screens.js";

export interface ScreenProps<Name extends RouteName> {
  readonly params: ParamsOf<Name>;
}

type Screens = { readonly [Name in RouteName]: ComponentType<ScreenProps<Name>> };

const loadWay = () => import("./on-the-way.js");
const Round = onTheWay(() => loadWay().then((way) => way.Round));
const Point = onTheWay(() => loadWay().then((way) => way.Point));

const ofHouse = <Name extends HouseScreen>(name: Name): ComponentType<ScreenProps<Name>> =>
  lazy(() => import("./house-screens.js").then(({ HOUSE_SCREENS }) => HOUSE_SCREENS[name]()));

const ofSeldom = <Name extends SeldomScreen>(name: Name): ComponentType<ScreenProps<Name>> =>
  lazy(() => import("./seldom-screens.js").then(({ SELDOM_SCREENS }) => SELDOM_SCREENS[name]()));

export const SCREENS: Screens = {
  cars: Cars,
  demo: lazy(() => import("./demo.js").then((file) => file.Demo)),
  "new-car": onTheWay(() => loadWay().then((way) => way.NewCar)),
  car: onTheWay(() => loadWay().then((way) => way.Car)),
  facts: ofSeldom("facts"),
  limits: ofSeldom("limits"),
  limit: ofSeldom("limit"),
  places: ofSeldom("places"),
  "car-file": ofSeldom("car-file"),
  wearing: ofSeldom("wearing"),
  wear: ofSeldom("wear"),
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
  viewing: ofSeldom("viewing"),
  "hand-over": ofSeldom("hand-over"),
  "what-now": ofSeldom("what-now"),
  cautions: lazy(() => import("./cautions.js").then((file) => file.Cautions)),
  gate: lazy(() => import("./gate.js").then((file) => file.Gate)),
  differ: ofSeldom("differ"),
  "judge-again": ofSeldom("judge-again"),
  history: ofSeldom("history"),
  "visit-file": ofSeldom("visit-file"),
  picture: ofSeldom("picture"),
  marks: ofSeldom("marks"),
  beside: ofSeldom("beside"),
  pictures: ofSeldom("pictures"),
  camera: lazy(() => import("./camera.js").then((file) => file.CameraScreen)),
  "visit-reckoner": ofSeldom("visit-reckoner"),
  "visit-reckoning": ofSeldom("visit-reckoning"),
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
