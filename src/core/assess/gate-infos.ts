/** Gates as all loaded files together make them. Knows no reply. */
import type { Evaluate } from "../expr/run.js";
import { type BuiltCommon, type BuiltSheet, engineIn, type Gate, type Plans, withBrought } from "../sheet/run.js";
import { DRIVE_AWAY } from "../terms/run.js";
import { type GateInfo, sheetOf } from "./model.js";

/** Gates of the shared files and of every loaded sheet; the same id is one gate with all conditions. */
export function gateInfos(
  common: BuiltCommon,
  sheets: readonly BuiltSheet[],
  linkAt: (plans: Plans, path: string) => Evaluate | undefined,
  loaded: readonly string[],
): readonly GateInfo[] {
  const parts = [
    ...common.common.gates.map((gate) => ({ gate, plans: common.plans, from: "common" })),
    ...sheets.flatMap((s) => s.sheet.gates.map((gate) => ({ gate, plans: s.plans, from: s.sheet.id }))),
  ];
  const driven = new Set(
    withBrought(
      common.common,
      sheets.map(({ sheet }) => sheet),
    ).states.flatMap((state) => (engineIn(state) === "driving" ? [state.id] : [])),
  );
  const ids = [...new Set(parts.map((p) => p.gate.id))];
  return ids.map((id) => {
    const mine = parts.filter((p) => p.gate.id === id);
    const conditions = (which: "trips" | "clears") =>
      mine.flatMap(({ gate, plans, from }) =>
        (gate[which] ?? []).map((_, i) => {
          const path = `gates/${id}/${which}/${i}`;
          return { path: `${from}:${path}`, when: linkAt(plans, path) };
        }),
      );
    const first: Gate | undefined = mine[0]?.gate;
    if (first === undefined) throw new Error(`gate ${id} from nowhere`);
    const set = [...new Set(mine.flatMap((p) => p.gate.set ?? []))];
    return {
      id,
      guards: first.guards,
      drives: first.guards === DRIVE_AWAY || driven.has(first.guards),
      starts: mine.some((p) => p.gate.starts === "not-cleared") ? "not-cleared" : "cleared",
      trips: conditions("trips"),
      clears: conditions("clears"),
      set,
      cautions: [...new Set(mine.flatMap((p) => p.gate.cautions))],
      missingSheets: [...new Set(set.map(sheetOf))].filter((s) => !loaded.includes(s)),
    };
  });
}
