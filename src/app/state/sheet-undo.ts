/** What this phone did last to a sheet under work, in words, for the row that takes it back. Pure. */
import { type Bodies, type HouseState, isEntry, type Step, undoable } from "../../core/record/index.js";
import { t } from "../texts/sheet-work.js";

export interface WorkUndo {
  readonly says: string;
  readonly step: Step;
}

type Kind = "house.draft" | "house.draft-item" | "house.draft-order";
interface Said {
  readonly kind: Kind;
  readonly body: Bodies[Kind];
}
const KINDS: ReadonlySet<string> = new Set<Kind>(["house.draft", "house.draft-item", "house.draft-order"]);

/** Undefined where the newest act of this phone in the house is none on this working copy. */
export function workUndo(
  house: HouseState,
  writer: string | undefined,
  isMine: (draft: string) => boolean,
): WorkUndo | undefined {
  const [step] = writer === undefined ? [] : undoable(house, writer);
  if (!step || step.kinds.some((kind) => kind !== "person" && !KINDS.has(kind))) return undefined;
  const [first] = step.ids.flatMap((id) => {
    const entry = house.ledger.log.get(id);
    // A body is what its kind says: it was checked when it was folded.
    return entry && isEntry(entry) && KINDS.has(entry.kind) ? [entry as unknown as Said] : [];
  });
  if (!first || !isMine(first.body.draft)) return undefined;
  const says = saysOf(first);
  return says === undefined ? undefined : { step, says };
}

function saysOf({ kind, body }: Said): string | undefined {
  if (kind === "house.draft") return (body as Bodies["house.draft"]).base ? undefined : t("sheet-undo.dropped");
  if (kind === "house.draft-order") return t("sheet-undo.order");
  return (body as Bodies["house.draft-item"]).to ? t("sheet-undo.item") : t("sheet-undo.out");
}
