/** What runs the cases of a sheet, gathered so that it is fetched only where one is proved. */
export { type Proving, proving, runCase } from "../../core/assess/author.js";
