/** Door of device/pdf: printed sheets made beside the screen. The worker itself is worker.ts. */
export { type PressWorker, startSheetPrinter } from "./printer.js";
