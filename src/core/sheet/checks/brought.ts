/** What a sheet brings: each thing by itself, and that no two files say different things under one id. */
import { idOf } from "../brings.js";
import { canonicalText } from "../edition.js";
import { engineIn } from "../engine-in.js";
import type { CarState, Common, Sheet } from "../schema-types.js";
import { checkPrefix, checkUnique } from "./ids.js";
import type { Checking } from "./known.js";
import { checkShared } from "./shared.js";

/** A car state that says what its engine does, and the same from before it could be said, are one. */
const meaningOf = (thing: object | string): string =>
  canonicalText(
    typeof thing === "object" && "order" in thing ? { ...thing, engine: engineIn(thing as CarState) } : thing,
  );

const LISTS = ["places", "states", "gauges", "aids", "cautions", "access", "facts"] as const;

export function checkBrought(sheet: Sheet, common: Common, others: readonly Sheet[], c: Checking): void {
  const { brings } = sheet;
  if (brings === undefined) return;
  for (const list of LISTS) {
    const things = brings[list] ?? [];
    const at = ["brings", list];
    checkUnique(at, things.map(idOf), c.report, list === "aids" ? [] : ["id"]);
    const shared = new Set((common[list] ?? []).map(idOf));
    const elsewhere = others.flatMap((other) =>
      (other.brings?.[list] ?? []).map((thing) => ({ thing, where: `sheet ${other.id}` })),
    );
    things.forEach((thing, i) => {
      const id = idOf(thing);
      if (shared.has(id)) c.report.problem("duplicate-id", [...at, i], { id, first: "the shared files have it" });
      const other = elsewhere.find((one) => idOf(one.thing) === id);
      if (other && meaningOf(other.thing) !== meaningOf(thing))
        c.report.problem("brought-differs", [...at, i], { id, first: other.where });
    });
  }
  checkPrefix(["brings", "cautions"], brings.cautions ?? [], "cau.", c.report);
  checkShared(brings, c, ["brings"]);
}
