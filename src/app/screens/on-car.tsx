/** Waits until a car is read, then draws what is inside. */
import type { ComponentChildren } from "preact";
import type { CarState } from "../../core/record/index.js";
import { useApp } from "../state/app.js";
import { carStreamOf } from "../state/routes.js";
import { MissingScreen } from "./frame.js";
import { lazy, OpeningScreen } from "./lazy.js";

const NotOpened = lazy(() => import("./not-opened.js").then((file) => file.NotOpened));

export function OnCar({
  param,
  children,
}: {
  readonly param: string;
  readonly children: (car: CarState, stream: string) => ComponentChildren;
}) {
  const { journal } = useApp();
  const stream = carStreamOf(param);
  const car = journal.car(stream).value;
  if (car.is === "missing") return <MissingScreen />;
  if (car.is === "opening") return <OpeningScreen />;
  if (car.is === "trouble") return <NotOpened problem={car.problem} />;
  return <>{children(car.state, stream)}</>;
}
