/**
 * How many digits of a currency stand behind the point: ISO 4217, the common ones, from memory. What browsers offer
 * instead follows use in shops (the forint with none) and is no basis for sums. Knows no rate of exchange.
 */

const NONE = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";
const TWO =
  "AED AUD BAM BGN BRL CAD CHF CNY CZK DKK EUR GBP GEL HKD HUF ILS INR MAD MDL MKD MXN MYR NOK NZD PHP PLN RON RSD SAR SEK SGD THB TRY TWD UAH USD ZAR";
const THREE = "BHD IQD JOD KWD LYD OMR TND";

const DIGITS: ReadonlyMap<string, number> = new Map(
  [
    { codes: NONE, digits: 0 },
    { codes: TWO, digits: 2 },
    { codes: THREE, digits: 3 },
  ].flatMap(({ codes, digits }) => codes.split(" ").map((code) => [code, digits] as const)),
);

/** Digits behind the point of a currency by its ISO 4217 code; undefined where the table does not know: ask. */
export const minorDigitsOf = (code: string): number | undefined => DIGITS.get(code);

/** Whether a text has the form of a currency code: three capital letters. */
export const isCurrencyCode = (code: string): boolean => /^[A-Z]{3}$/.test(code);
