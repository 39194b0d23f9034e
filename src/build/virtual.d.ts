/** What the modules made from check sheets export. */

declare module "virtual:leadlamp/index" {
  import type { BareCommonTexts, BuiltCommon, Complaints, ListedSheet } from "../core/sheet/run.js";

  /** Every sheet the app comes with. */
  export const sheets: readonly ListedSheet[];
  export const common: {
    readonly edition: string;
    readonly load: () => Promise<BuiltCommon>;
    /** The same without its plans. */
    readonly source: () => Promise<Omit<BuiltCommon, "plans" | "planVersion">>;
    /** By language. */
    readonly texts: Readonly<Record<string, () => Promise<BareCommonTexts>>>;
  };
  /** By language. */
  export const complaints: Readonly<Record<string, () => Promise<Complaints>>>;
}

declare module "virtual:leadlamp/complaints/*" {
  import type { Complaints } from "../core/sheet/run.js";

  export const complaints: Complaints;
}

declare module "virtual:leadlamp/plans/*" {
  import type { BuiltSheet } from "../core/sheet/run.js";

  export const plans: Pick<BuiltSheet, "plans" | "planVersion">;
}

declare module "virtual:leadlamp/texts/en/*" {
  import type { SheetTexts } from "../core/sheet/run.js";

  export const texts: SheetTexts;
}

declare module "virtual:leadlamp/cases" {
  import type { SheetCase } from "../core/sheet/run.js";

  /** By the sheet's id: what proves it. */
  export const casesOf: Readonly<Record<string, () => Promise<readonly SheetCase[]>>>;
}
