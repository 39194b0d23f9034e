/** The estimate told first, read back as it was kept. Knows no sum and no screen. */
import { COLUMNS, type FirstEstimate } from "../../core/plan/index.js";

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A kept estimate read back; undefined when another version wrote what this one can't read. */
export function readFirst(kept: unknown): FirstEstimate | undefined {
  if (!isRecord(kept) || kept["kind"] !== "first-estimate/1") return undefined;
  const { gross, currency, setAside } = kept;
  const column = COLUMNS.find((one) => one === kept["told"]);
  const isWhole =
    column !== undefined &&
    isRecord(gross) &&
    Number.isSafeInteger(gross[column]) &&
    typeof currency === "string" &&
    Array.isArray(setAside);
  // Its kind says which shape it is, and the figures the comparison rests on are there.
  return isWhole ? (kept as unknown as FirstEstimate) : undefined;
}
