/** On a car's page: the next look over all its visits. Each look leads to what it comes from. */
import type { CarState } from "../../core/record/index.js";
import type { Audience } from "../../core/terms/index.js";
import { whereFrom } from "../state/looks-words.js";
import { paramOf } from "../state/routes.js";
import { t } from "../texts/looks.js";
import { LooksBand } from "./looks-band.js";
import { useLooks } from "./use-looks.js";

export function CarLooks({ car, who }: { readonly car: CarState; readonly who: Audience }) {
  const looks = useLooks(car);
  if (!looks) return null;
  const param = paramOf(car.stream);
  return (
    <LooksBand looks={looks} who={who} heading={t("looks.title")} hrefOf={(look) => whereFrom(looks, param, look)} />
  );
}
