/** Drafts that erase. Apart from undo.ts because a store needs them, and few sessions erase anything. */
import type { Act, Draft, FoldedState, IdText } from "./contract.js";
import { draft } from "./draft.js";
import { parseId } from "./identity.js";
import { canBeErased, replacedBy } from "./ledger.js";
import { byStream } from "./undo.js";

/** Erases entries for good; one draft per stream. Erasures themselves are left out: they cannot be erased. */
export function draftErase(
  act: Act,
  { ledger }: Pick<FoldedState, "ledger">,
  ids: readonly IdText[],
): readonly Draft[] {
  const named = ids.filter((id) => canBeErased(parseId(id)?.stream ?? "", id, ledger.log.get(id)));
  return [...byStream(named)].map(([stream, own]) =>
    draft(act, stream, "erase", {
      of: own.map((id) => {
        const replaced = replacedBy(ledger, id);
        return replaced.length > 0 ? { id, replaced } : { id };
      }),
    }),
  );
}
