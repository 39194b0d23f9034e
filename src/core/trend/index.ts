/** The door of comparing visits: readings of one part in, series with their limits ahead out. Pure. */
export type * from "./contract.js";
export { seriesOf } from "./series.js";
