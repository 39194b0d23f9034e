/** Plans the editions a visit froze when their plans are of another version. Loaded with the parser, only when needed. */
import { planAgain } from "../../core/sheet/author.js";
import type { Compiler } from "../state/shelf.js";

export const planEditions: Compiler = {
  compile: async (common, sheets) =>
    planAgain(
      { edition: common.edition, bare: common.common },
      sheets.map((s) => ({ edition: s.edition, bare: s.sheet })),
      { functions: (await import("../state/trade-work.js")).TRADE_SIGNATURES },
    ),
};
