/** Which car a new visit is to, where there are several. */
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import type { CarsView } from "../state/cars-view.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/index.js";

export function WhichCar({ view, onClose }: { readonly view: CarsView; readonly onClose: () => void }) {
  return (
    <Sheet open title={t("cars.which")} closeWords={t("app.close")} onClose={onClose}>
      {[...view.own, ...view.demo].map((car) => (
        <ListRow
          key={car.stream}
          title={car.name}
          second={car.second}
          href={to("new-visit", { car: paramOf(car.stream) })}
        />
      ))}
    </Sheet>
  );
}
