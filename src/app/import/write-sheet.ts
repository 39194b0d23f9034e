/** A sheet as one YAML or JSON file that this app, and a person, can read. Checks nothing. */
import { stringify } from "yaml";
import type { Sheet } from "../../core/sheet/run.js";

/** Every text is quoted: a condition must be, and no word may turn into a number or a yes. */
export const writeSheet = (sheet: Sheet, as: "yaml" | "json"): string =>
  as === "json"
    ? `${JSON.stringify(sheet, null, 2)}\n`
    : stringify(sheet, { defaultStringType: "QUOTE_DOUBLE", defaultKeyType: "PLAIN", lineWidth: 0 });
