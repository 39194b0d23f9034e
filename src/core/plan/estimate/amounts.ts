/** The five columns of an estimate. Knows whole numbers only, no money and no hours. */

/** `p50` and `p80` are of the labour; the parts stand beside them as likely and as high (no cancelling claimed). */
export const COLUMNS = ["low", "likely", "p50", "p80", "high"] as const;
export type Column = (typeof COLUMNS)[number];

/** One whole number a column: minutes, or minor units of money. */
export type Amounts = Readonly<Record<Column, number>>;

/** One amount worked out for every column. */
export const perColumn = (of: (column: Column) => number): Amounts => ({
  low: of("low"),
  likely: of("likely"),
  p50: of("p50"),
  p80: of("p80"),
  high: of("high"),
});

/** The sum, column by column. */
export const addAmounts = (all: readonly Amounts[]): Amounts =>
  perColumn((column) => all.reduce((sum, amounts) => sum + amounts[column], 0));
