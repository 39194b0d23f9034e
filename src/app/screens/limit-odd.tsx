/** A figure outside what is usual: which slip it may be, and saying on purpose that it is right. */
import { Tool } from "../parts/button.js";
import type { FigureRead } from "../state/figure-form.js";
import { slipTexts } from "../state/figure-words.js";
import { figure, t } from "../texts/limits.js";
import { unitShown } from "../texts/units.js";

interface OddProps {
  readonly read: FigureRead;
  readonly onSure: (isSure: boolean) => void;
}

export function OddNotice({ read: { odd, isSure }, onSure }: OddProps) {
  return (
    <div role="status">
      {odd.length > 0 && (
        <section class="notice">
          <div class="notice-words">
            <strong class="row-title">{isSure ? t("odd.said") : t("odd.title")}</strong>
            {odd.map(({ at, reading, odd: one }) => (
              <div key={at}>
                <p class="small">
                  {t("odd.says", {
                    value: `${figure(reading.text)} ${unitShown(reading.unit)}`.trim(),
                    low: one.low,
                    high: one.high,
                    unit: unitShown(reading.unit),
                  })}
                </p>
                {!isSure &&
                  slipTexts(one, reading).map((says) => (
                    <p key={says} class="small">
                      {says}
                    </p>
                  ))}
              </div>
            ))}
          </div>
          <div class="notice-acts">
            <Tool words={t(isSure ? "odd.unsure" : "odd.sure")} onPress={() => onSure(!isSure)} />
          </div>
        </section>
      )}
    </div>
  );
}
