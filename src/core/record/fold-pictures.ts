/**
 * The marks of a visit's pictures, and which picture each was taken after. Folded from the visit's own log when someone
 * looks at a picture: a reply does without. Refuses to draw and to measure.
 */
import type { FoldedState, IdText, Logged, Stands } from "./contract.js";
import { everIn, fold, type Parts, setOrDrop } from "./fold.js";
import { compareShown, isEntry } from "./identity.js";
import type { Known } from "./kinds.js";
import type { PictureKey, PictureMark } from "./picture-bodies.js";
import { PICTURE_KINDS } from "./picture-kinds.js";
import { standsIn } from "./standing.js";

/** One mark as it stands, under the name it keeps. */
export interface NamedMark {
  readonly mark: string;
  readonly stands: Stands<PictureMark>;
}

/** Of `trouble` only `unknown` means anything here: the other entries of the visit are left out. */
export interface PicturesState extends FoldedState {
  readonly of: "visit";
  /** By picture, in the order the marks were first drawn; two under one name where people mended it apart. */
  readonly marks: ReadonlyMap<PictureKey, readonly NamedMark[]>;
  /** By picture: the earlier picture it was taken after. */
  readonly after: ReadonlyMap<PictureKey, readonly Stands<IdText>[]>;
}

const markOf = (e: Known): PictureMark | null => (e.kind === "picture.mark" ? e.body.drawn : null);

const PICTURES: Parts<PicturesState> = {
  of: "visit",
  kinds: PICTURE_KINDS,
  begins: "opened|",
  empty: () => ({ of: "visit", marks: new Map(), after: new Map() }),
  copy: (state) => ({ ...state, marks: new Map(state.marks), after: new Map(state.after) }),
  fill: {
    mark: (own, ledger, _slot, rest) => {
      const [picture = ""] = rest.split("/");
      const slots = [...ledger.slots.keys()].filter((one) => one.startsWith(`mark|${picture}/`));
      const firstOf = (one: string): Known | undefined => [...everIn(ledger, one)].sort(compareShown)[0];
      const begun = slots.flatMap((one) => {
        const first = firstOf(one);
        return first ? [{ slot: one, first }] : [];
      });
      const named = begun
        .sort((a, b) => compareShown(a.first, b.first))
        .flatMap((one) =>
          standsIn(ledger, one.slot, markOf).map((stands) => ({
            mark: one.slot.slice(one.slot.indexOf("/") + 1),
            stands,
          })),
        );
      setOrDrop(own.marks, picture, named);
    },
    after: (own, ledger, slot, rest) =>
      setOrDrop(
        own.after,
        rest,
        standsIn(ledger, slot, (e) => (e.kind === "picture.after" ? e.body.after : null)),
      ),
  },
  join: (own, folded) => ({ ...own, ...folded }),
};

/** What these entries say of pictures, in whatever order, however often. */
export function foldPictures(entries: Iterable<Logged>): PicturesState {
  const own: Logged[] = [];
  for (const logged of entries) {
    const counts =
      !isEntry(logged) || logged.kind === "undo" || logged.kind === "erase" || logged.kind.startsWith("picture.");
    if (counts) own.push(logged);
  }
  return fold(PICTURES, own);
}
