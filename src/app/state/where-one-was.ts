/**
 * Where a person was in a visit, to go on there. Remembered in the phone's small text store, which answers at once but
 * which a killed browser may find seconds old, and kept in the store beside the record, which is never older than the
 * last step. A reply kept since then wins over both. Knows no screen.
 */
import { compareStamps, type Stamp, type Store, type VisitState } from "../../core/record/index.js";
import type { TextShelf } from "./settings.js";
import type { PointAt } from "./standing.js";

type Replies = VisitState["replies"];

const keyFor = (visit: string): string => `leadlamp.at.${visit}`;
const stampText = (stamp: Stamp | undefined): string => (stamp ? `${stamp.wall} ${stamp.count}` : "");

/** The reply kept last of those that stand, and the point it answers. */
function newestReply(replies: Replies): { readonly at: PointAt; readonly stamp: Stamp } | undefined {
  let newest: { readonly at: PointAt; readonly stamp: Stamp } | undefined;
  for (const { key, standing } of replies.values()) {
    for (const { at: stamp } of standing)
      if (!newest || compareStamps(stamp, newest.stamp) > 0) newest = { at: key, stamp };
  }
  return newest;
}

type Memory = readonly [name: string, text: string];

/**
 * Remembers where the person is, together with the newest reply there was by then; without `replies` no reply outdates
 * it. Gives what {@link Store.keepSetting} takes, for a step that no reply tells of.
 */
export function rememberPoint(shelf: TextShelf, visit: string, at: PointAt, replies?: Replies): Memory {
  const stamp = replies ? newestReply(replies)?.stamp : { wall: Number.MAX_SAFE_INTEGER, count: 0 };
  const memory: Memory = [keyFor(visit), `${at.state} ${at.place} ${at.point} ${stampText(stamp)}`.trimEnd()];
  shelf.put(...memory);
  return memory;
}

/** Brings the small text store up to what is kept beside the record, once, when the app comes back to a visit. */
export async function refreshPoint(shelf: TextShelf, store: Pick<Store, "setting">, visit: string): Promise<void> {
  const kept = await store.setting(keyFor(visit));
  if (kept.ok && typeof kept.value === "string") shelf.put(keyFor(visit), kept.value);
}

/**
 * Where the person was: as remembered, or at the reply kept since. Undefined where nothing is remembered: a reply given
 * on the form that opens a visit, or on another phone, is no place this person stood at.
 */
export function recallPoint(shelf: TextShelf, visit: string, replies: Replies): PointAt | undefined {
  const [state, place, point, wall, count] = (shelf.get(keyFor(visit)) ?? "").split(" ");
  if (!state || !place || !point) return undefined;
  const newest = newestReply(replies);
  const known = { wall: Number(wall ?? 0), count: Number(count ?? 0) };
  if (!newest || compareStamps(newest.stamp, known) <= 0) return { state, place, point };
  const { at } = newest;
  return { state: at.state, place: at.place, point: at.point };
}

/** Forgets where one was, of a visit that is deleted. */
export async function forgetPoint(store: Pick<Store, "setting" | "keepSetting">, visit: string): Promise<void> {
  const kept = await store.setting(keyFor(visit));
  if (kept.ok && kept.value !== undefined && kept.value !== null) await store.keepSetting(keyFor(visit), null);
}
