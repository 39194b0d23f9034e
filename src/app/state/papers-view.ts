/**
 * The papers of a visit that can be deleted for good: pictures, sounds, notes, the owner's words, what was taken back or
 * written over included, since their bodies are still kept. What its plan holds: plan-papers.ts. Pure.
 */
import {
  blobsOf,
  type Entry,
  type IdText,
  idText,
  isEntry,
  pictureKey,
  type VisitState,
} from "../../core/record/index.js";
import type { PlanPaperIs } from "./plan-papers.js";

const KINDS = {
  picture: "picture",
  "picture.mark": "picture",
  "picture.after": "picture",
  sound: "sound",
  note: "note",
  "visit.complaint": "complaint",
} as const;
/** What is said of a picture in entries of its own goes with it, also where the picture itself is gone already. */
const isOverPicture = ({ kind }: Entry): boolean => kind === "picture.mark" || kind === "picture.after";

export interface Paper {
  readonly key: string;
  readonly is: (typeof KINDS)[keyof typeof KINDS] | PlanPaperIs | "unread";
  /** What it shows or says, where that is known. */
  readonly words: string;
  /** Of a picture: its small one. */
  readonly thumb?: string;
  /** Taken back: no screen shows it any more. */
  readonly hidden: boolean;
  /** Every entry that has to go with it. */
  readonly ids: readonly IdText[];
}

interface PaperBody {
  readonly blob?: string;
  readonly thumb?: string;
  readonly text?: string;
  readonly name?: string;
  readonly replaces?: readonly IdText[];
  /** Of a mark: the picture it lies over. */
  readonly picture?: string;
}

const bodyOf = ({ body }: Entry): PaperBody => (typeof body === "object" && body !== null ? body : {});

export function papersOf(visit: VisitState): readonly Paper[] {
  const { log } = visit.ledger;
  const entries = [...log.values()].filter(isEntry);
  const papers = entries.filter(({ kind }) => Object.hasOwn(KINDS, kind));
  /** What a text was written over, back to the first. */
  const first = (id: IdText, passed: ReadonlySet<IdText> = new Set()): IdText => {
    const entry = log.get(id);
    const over = entry && isEntry(entry) ? bodyOf(entry).replaces?.[0] : undefined;
    return over === undefined || passed.has(over) || !log.has(over) ? id : first(over, new Set([...passed, id]));
  };
  const groups = new Map<string, Entry[]>();
  for (const entry of papers) {
    const { blob, picture } = bodyOf(entry);
    // A mark names its picture by more than the bare hash: that would keep the bytes.
    const over = isOverPicture(entry) ? picture?.slice(pictureKey("").length) : undefined;
    const key = blob ?? over ?? first(idText(entry));
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  const shown = new Set<IdText>(
    [visit.pictures, visit.sounds, visit.notes, visit.complaints].flatMap((list) => list.map(({ id }) => id)),
  );
  return [...groups].flatMap(([key, group]): readonly Paper[] => {
    const last = group.findLast((entry) => !isOverPicture(entry)) ?? group.at(-1);
    if (!last) return [];
    const { thumb, text, name, blob } = bodyOf(last);
    // Whatever else names the bytes keeps them: it goes too, of whatever kind.
    const others = blob === undefined ? [] : entries.filter((entry) => blobsOf(entry).includes(blob));
    const ids = [...new Set([...group, ...others].map(idText))];
    return [
      {
        key,
        is: KINDS[last.kind as keyof typeof KINDS],
        words: text ?? name ?? "",
        ...(thumb === undefined ? {} : { thumb }),
        hidden: !ids.some((id) => shown.has(id)),
        ids,
      },
    ];
  });
}
