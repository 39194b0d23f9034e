/** The door of trade: the table of functions, what runs them, and what conditions may know of them. */
export { calculate } from "./calculate.js";
export { TRADE_SIGNATURES, TRADE_WORK } from "./callable.js";
export {
  type Argument,
  type Calculated,
  type Given,
  type Gives,
  isList,
  isWordArgument,
  type ResultKind,
  type Source,
  type TradeFunction,
} from "./contract.js";
export { normal } from "./guard-band.js";
export { TRADE_MESSAGES, tellSource, tellTrade } from "./messages.js";
export { type Reckoned, reckon } from "./reckon.js";
export { SUBJECTS, type Subject, TRADE_TABLE } from "./table.js";
export {
  type Fitted,
  fittedLine,
  type LeftAt,
  leastSquaresCrossing,
  lineWithin,
  medianLine,
  medianSlopeRange,
} from "./trend.js";
