/** The door of estimates: labour, parts, tax, the first one against now, caps. */
export { type Amounts, COLUMNS, type Column } from "./amounts.js";
export type { MaybeThree } from "./checks.js";
export {
  type Estimate,
  type EstimateInput,
  type EstimateLine,
  type EstimateTax,
  estimate,
} from "./estimate.js";
export {
  type Addition,
  type FirstEstimate,
  type Forecast,
  forecast,
  freezeEstimate,
  type OverMark,
} from "./forecast.js";
export {
  type HouseTerms,
  type LabourRate,
  TAX_LEVELS,
  type TaxGroup,
  type TaxLevel,
  type TaxProfile,
} from "./house-terms.js";
export { ALLOWANCE } from "./labour.js";
export type { PartLine } from "./parts.js";
export { type CapLine, type CapState, type Caps, type CapTold, type ScopeCap, scopeCap } from "./scope-cap.js";
export {
  dividedBy,
  figuresOf,
  type Spread,
  type SpreadFigures,
  type SpreadRule,
  spreadOf,
  timesShared,
  together,
  Z80,
} from "./spread.js";
export { type GroupTax, type Taxed, taxOn } from "./tax.js";
export type { EstimateJob, OpenedState, WorkGiven } from "./works.js";
