/** The functions of the trade that conditions call: a lazy piece of its own, fetched where a visit's sheets call one. */
export { TRADE_SIGNATURES, TRADE_WORK, tellSource, tellTrade } from "../../core/trade/index.js";
