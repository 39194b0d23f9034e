/** Which screen an address shows. The car list comes at once, every other screen when it is first opened. */
import type { ComponentType } from "preact";
import { type ParamsOf, ROUTES, type RouteName } from "../state/routes.js";
import { Cars } from "./cars.js";
import { lazy, onTheWay } from "./lazy.js";

export interface ScreenProps<Name extends RouteName> {
  readonly params: ParamsOf<Name>;
}

type Screens = { readonly [Name in RouteName]: ComponentType<ScreenProps<Name>> };

const loadWay = () => import("./on-the-way.js");
const Round = onTheWay(() => loadWay().then((way) => way.Round));
const Point = onTheWay(() => loadWay().then((way) => way.Point));

/** Those until the first reply; the car list is there at once. */
const ON_THE_WAY = {
  cars: Cars,
  "new-car": onTheWay<ScreenProps<"new-car">>(() => loadWay().then((way) => way.NewCar)),
  car: onTheWay(() => loadWay().then((way) => way.Car)),
  "new-visit": onTheWay(() => loadWay().then((way) => way.NewVisit)),
  round: Round,
  point: Point,
};
export type LaterScreen = Exclude<RouteName, keyof typeof ON_THE_WAY>;

const ofLater = <Name extends LaterScreen>(name: Name): ComponentType<ScreenProps<Name>> =>
  lazy(() => import("./later-screens.js").then(({ LATER_SCREENS }) => LATER_SCREENS[name]()));

type Later = { readonly [Name in LaterScreen]: ComponentType<ScreenProps<Name>> };

/** Of every route of the table; the compiler holds later-screens.tsx to all that is not on the way. */
export const SCREENS: Screens = {
  ...(Object.fromEntries(Object.keys(ROUTES).map((name) => [name, ofLater(name as LaterScreen)])) as Later),
  ...ON_THE_WAY,
};

/** Fetches the round ahead, so that the first press after the car list waits for nothing. */
export const preloadRound = (): void => {
  Round.preload();
  Point.preload();
};
