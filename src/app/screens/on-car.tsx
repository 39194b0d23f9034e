/** Waits until a car is read, then draws what is inside. */
import type { ComponentChildren } from "preact";
import type { CarState } from "../../core/record/index.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { carStreamOf } from "../state/routes.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { MissingScreen, SpokenTitle, Top } from "./frame.js";
import { OpeningScreen } from "./lazy.js";

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
  if (car.is === "trouble") {
    return (
      <>
        <Top back={t("cars.title")} href="#/" />
        <main>
          <SpokenTitle title={t("app.not-opened")} />
          <Notice kind="error" title={t("app.not-opened")} says={problemText(car.problem)} />
        </main>
      </>
    );
  }
  return <>{children(car.state, stream)}</>;
}
