/** Door of device/pdf: printed sheets made beside the screen. The worker itself is worker.ts; whoever asks starts it. */
import type { SheetPrinter } from "../../core/report/index.js";
import { type PressWorker, startSheetPrinter } from "./printer.js";
import address from "./worker.js?worker&url";

export const sheetPrinter = (start: (address: string) => PressWorker): SheetPrinter =>
  startSheetPrinter(() => start(address));
