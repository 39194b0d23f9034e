/** After an owner's look: when to look again. Works nothing out. */
import type { LooksNow } from "../state/looks-ground.js";
import { whereFrom } from "../state/looks-words.js";
import { t } from "../texts/looks.js";
import { LooksBand } from "./looks-band.js";

export const LooksAfter = ({ looks, car }: { readonly looks: LooksNow; readonly car: string }) => (
  <LooksBand looks={looks} who="owner" heading={t("looks.title")} hrefOf={(look) => whereFrom(looks, car, look)} />
);
