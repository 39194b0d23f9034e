/** Words all of planning shares. Knows no sheet, no record and no clock. */
export type { IsoDate, Three } from "../terms/index.js";
