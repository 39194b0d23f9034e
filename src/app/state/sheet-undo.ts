/** What this phone did last to a sheet under work, in words, for the row that takes it back. Pure. */
import { type Bodies, type HouseState, isEntry, type Step, undoable } from "../../core/record/index.js";
import { DRAFT_LISTS, type DraftItem, type DraftList } from "../../core/sheet/work.js";
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

/** What an item is called in its list. */
export type Called = (list: DraftList, item: string, to: DraftItem | null) => string | undefined;

/** Undefined where the newest act of this phone in the house is none on this working copy. */
export function workUndo(
  house: HouseState,
  writer: string | undefined,
  isMine: (draft: string) => boolean,
  called: Called = () => undefined,
): WorkUndo | undefined {
  const [step] = writer === undefined ? [] : undoable(house, writer);
  if (!step || step.kinds.some((kind) => kind !== "person" && !KINDS.has(kind))) return undefined;
  const [first] = step.ids.flatMap((id) => {
    const entry = house.ledger.log.get(id);
    // A body is what its kind says: it was checked when it was folded.
    return entry && isEntry(entry) && KINDS.has(entry.kind) ? [entry as unknown as Said] : [];
  });
  if (!first || !isMine(first.body.draft)) return undefined;
  const says = saysOf(first, (list, item, to) => called(list, item, to ?? lastPut(house, first.body)));
  return says === undefined ? undefined : { step, says };
}

/** An item taken out as it was put last; null where it was never put and stands in the base alone. */
function lastPut({ ledger }: HouseState, out: Said["body"]): DraftItem | null {
  const puts = [...ledger.log.values()].flatMap((entry): readonly DraftItem[] => {
    if (!isEntry(entry) || entry.kind !== "house.draft-item") return [];
    const body = entry.body as Bodies["house.draft-item"];
    const of = out as Bodies["house.draft-item"];
    const isSame = body.draft === of.draft && body.list === of.list && body.item === of.item;
    return isSame && body.to ? [body.to] : [];
  });
  return puts.at(-1) ?? null;
}

const listOf = (name: string): DraftList | undefined => DRAFT_LISTS.find((list) => list === name);

function saysOf({ kind, body }: Said, called: Called): string | undefined {
  if (kind === "house.draft") return (body as Bodies["house.draft"]).base ? undefined : t("sheet-undo.dropped");
  const list = listOf((body as Bodies["house.draft-item"]).list);
  const where = list === undefined ? "" : t(`sheet-list.${list}`);
  if (kind === "house.draft-order") return t("sheet-undo.order", { list: where });
  const { item, to } = body as Bodies["house.draft-item"];
  const title = list && called(list, item, to);
  if (title === undefined) return t(to ? "sheet-undo.one" : "sheet-undo.one-out", { list: where });
  return t(to ? "sheet-undo.item" : "sheet-undo.out", { list: where, title });
}
