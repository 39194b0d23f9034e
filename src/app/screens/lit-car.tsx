/** The car last worked on, in the light: its plan as far as it is inked, the worst caution where one stands, and going on. */
import { NextAction } from "../parts/button.js";
import { CarPlan } from "../parts/car-plan.js";
import { CautionBar } from "../parts/caution-bar.js";
import { Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import type { CarLine } from "../state/cars-view.js";
import { recallGlance } from "../state/glance-kept.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/first.js";

export function LitCar({ car }: { readonly car: CarLine }) {
  const { remembered } = useApp();
  const glance = car.last ? recallGlance(remembered, car.last.stream) : undefined;
  const visit = car.last && paramOf(car.last.stream);
  const says =
    car.open && glance ? t("cars.open-glance", { open: car.second, done: glance.done, all: glance.all }) : car.second;
  return (
    <Pool as="section" label={car.name} bare>
      <a class="pool-head" href={to("car", { car: paramOf(car.stream) })}>
        <h2>{car.name}</h2>
        <p class="small n">{says}</p>
      </a>
      <CarPlan
        plan="body"
        side="left"
        places={glance?.places ?? []}
        label={t("cars.plan", { car: car.name })}
        listWords=""
        cone={false}
        rest={car.looked && !glance ? "done" : glance ? "ghost" : "not-looked"}
      />
      {visit && glance?.caution !== undefined && (
        <CautionBar
          signal={glance.caution.signal}
          word={t(`signal.${glance.caution.signal}`)}
          not={glance.caution.not}
          href={to("cautions", { visit })}
        />
      )}
      <div class="acts">
        {visit && car.open && (
          <NextAction
            words={t("cars.go-on")}
            href={to("round", { visit })}
            {...(glance?.spot ? { says: glance.spot } : {})}
          />
        )}
        {visit && !car.open && <NextAction words={t("cars.see")} href={to("findings", { visit })} />}
      </div>
    </Pool>
  );
}
