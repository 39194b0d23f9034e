/** Copies as screens need them: what to name a file, what to remember of one, and what to forget of a car deleted. */
import {
  type Act,
  type CopyMade,
  type CopyPlan,
  compareStamps,
  FIRST_STAMP,
  type Store,
  type Summary,
  stampNext,
} from "../../core/record/index.js";
import type { Problem } from "../../core/terms/index.js";
import type { Phone } from "./journal.js";
import type { Settings } from "./settings.js";

const two = (value: number): string => String(value).padStart(2, "0");

/** `2026-11-29`, as the phone's own calendar has it. */
function dayOf(now: number): string {
  const date = new Date(now);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** A name file systems take: `leadlamp-visit-little-one-2026-11-29.zip`, numbered where there are parts. */
export function copyName(of: string, now: number, plan: CopyPlan, part: number, locked: boolean): string {
  const plain = of
    .normalize("NFD")
    .replace(/\p{M}+/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  const parts = plan.volumes.length > 1 ? `-${part + 1}-of-${plan.volumes.length}` : "";
  return `leadlamp-${plain === "" ? plan.holds : plain}-${dayOf(now)}${parts}.zip${locked ? ".age" : ""}`;
}

/** What to remember once a copy was handed over whole; undefined for files that are no copies of everything. */
export const madeOf = ({ holds, streams }: CopyPlan, at: number): CopyMade | undefined =>
  holds === "everything" || holds === "new" ? { at, streams } : undefined;

/** How many blobs the last copy lacked have come since: only what is new brings them along. */
export async function cameSince(store: Pick<Store, "missingBlobs">, made: CopyMade | undefined): Promise<number> {
  const lacked = [...new Set(Object.values(made?.streams ?? {}).flatMap(({ lacking = [] }) => lacking))];
  const missing = await store.missingBlobs(lacked);
  return missing.ok ? lacked.length - missing.value.length : 0;
}

/** An act of the person who holds the phone, after everything the summaries know of. */
export function actNow(phone: Phone, settings: Settings, summaries: readonly Summary[]): Act {
  const last = summaries.reduce((now, { last: one }) => (compareStamps(one, now) > 0 ? one : now), FIRST_STAMP);
  return { id: phone.nonce(), by: settings.person, at: stampNext(last, phone.now()), nonce: phone.nonce };
}

/** Where something is wrong in a file: `journal.jsonl, line 12, entry.body`. */
export const placeIn = ({ where: { file, line, path } }: Problem): string =>
  [file, line === undefined ? undefined : `line ${line}`, path].filter((one) => one !== undefined).join(", ");
