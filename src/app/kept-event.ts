/**
 * Tells the page's surroundings that entries are durable, for those who watch from outside the app (tests that kill
 * the browser, a bench). Carries identities only, never what was said; nothing in the app listens.
 */
import type { Entry } from "../core/record/index.js";

export const KEPT_EVENT = "leadlamp:kept";

/** What the event's `detail` holds. */
export interface KeptDetail {
  readonly kept: readonly {
    readonly stream: string;
    readonly writer: string;
    readonly seq: number;
    readonly nonce: string;
    readonly kind: string;
  }[];
}

/** Dispatches {@link KEPT_EVENT} on the document; call only after the store's transaction completed. */
export function tellKept(entries: readonly Entry[]): void {
  const kept = entries.map(({ stream, writer, seq, nonce, kind }) => ({ stream, writer, seq, nonce, kind }));
  document.dispatchEvent(new CustomEvent<KeptDetail>(KEPT_EVENT, { detail: { kept } }));
}
