/** The gauges of this house: which measures what, how well, and when it was last checked. Pure. */
import type { HouseGauge, HouseState } from "../../core/record/index.js";
import { DAY_MS } from "../../core/terms/index.js";
import { rounded, t } from "../texts/reading.js";
import { unitShown } from "../texts/units.js";

/** The gauges that stand, by name. */
export const gaugesOf = (house: Pick<HouseState, "gauges">): readonly HouseGauge[] =>
  [...house.gauges.values()]
    .flatMap((standing) => standing.at(-1)?.value ?? [])
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));

/** The one this house uses where a point names a gauge of the shared files. */
export const gaugeAs = (house: Pick<HouseState, "gauges">, tool: string): HouseGauge | undefined =>
  tool === "" ? undefined : gaugesOf(house).find((gauge) => gauge.tool === tool);

/** Checked longer ago than this is said; common practice, no source: once a year. */
const CHECK_DAYS = 365;

/** 'Reads to 0.01, gauge ± 0.02 mm, checked 30 Nov 2025'. */
export function gaugeLine(gauge: HouseGauge, now: number, day: (ms: number) => string): string {
  const figures = t("reading.gauge", {
    resolution: rounded(gauge.resolution, 4),
    error: rounded(gauge.error, 4),
    unit: unitShown(gauge.unit),
  });
  const checked = gauge.checked === undefined ? Number.NaN : Date.parse(gauge.checked);
  if (Number.isNaN(checked)) return `${figures}. ${t("gauges.never-checked")}`;
  const said = t("gauges.checked-on", { when: day(checked) });
  return now - checked > CHECK_DAYS * DAY_MS ? `${figures}. ${said}: ${t("gauges.overdue")}` : `${figures}. ${said}`;
}
