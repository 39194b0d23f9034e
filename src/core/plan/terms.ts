/** Words all of planning shares. Knows no sheet, no record and no clock. */

/** Low, likely, high: whole numbers, none above the next. Minutes, or minor units of money. */
export type Three = readonly [low: number, likely: number, high: number];

/** A calendar day, `YYYY-MM-DD`, with no time and no zone. */
export type IsoDate = string;
