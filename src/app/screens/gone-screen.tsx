/** In place of a car or visit just deleted: what is left of it, in numbers, and the way on. */
import { NextAction } from "../parts/button.js";
import { t } from "../texts/files.js";
import { type ErasedNow, ErasedTold } from "./erasing.js";
import { Plain } from "./frame.js";

export function GoneScreen({ erased }: { readonly erased: ErasedNow }) {
  return (
    <Plain back={t("cars.title")} href="#/" title={t("erase.done")}>
      <ErasedTold erased={erased} />
      <div class="acts">
        <NextAction words={t("read.to-cars")} href="#/" />
      </div>
    </Plain>
  );
}
