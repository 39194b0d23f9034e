/**
 * The papers of a visit that can be deleted for good: pictures, sounds, notes, the owner's words, what was taken back or
 * written over included, since their bodies are still kept. Pure.
 */
import { blobsOf, type Entry, type IdText, idText, isEntry, type VisitState } from "../../core/record/index.js";

const KINDS = { picture: "picture", sound: "sound", note: "note", "visit.complaint": "complaint" } as const;

export interface Paper {
  readonly key: string;
  readonly is: (typeof KINDS)[keyof typeof KINDS];
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
    const key = bodyOf(entry).blob ?? first(idText(entry));
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  const shown = new Set<IdText>(
    [visit.pictures, visit.sounds, visit.notes, visit.complaints].flatMap((list) => list.map(({ id }) => id)),
  );
  return [...groups].flatMap(([key, group]): readonly Paper[] => {
    const last = group.at(-1);
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
