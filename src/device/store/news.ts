/** Tells the other tabs of this browser what changed, and hears from them. Refuses to know what a change means. */
import type { Change } from "../../core/record/index.js";

export interface News {
  tell(changes: readonly Change[]): void;
  hear(listen: (changes: readonly Change[]) => void): () => void;
  close(): void;
}

/** News under a name; silent where the browser has no such channel, and then a tab sees changes when it reads again. */
export function openNews(name: string): News {
  const listeners = new Set<(changes: readonly Change[]) => void>();
  const channel = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(name);
  let waiting: Change[] = [];
  const post = (): void => {
    if (waiting.length > 0) channel?.postMessage(waiting);
    waiting = [];
  };
  channel?.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
    const changes = Array.isArray(data) ? data.filter(isChange) : [];
    for (const listen of listeners) listen(changes);
  });
  return {
    tell(changes) {
      // Whoever waits for an entry to be kept goes first: telling the others costs a tenth of keeping it.
      if (waiting.length === 0) setTimeout(post);
      waiting.push(...changes);
    },
    hear(listen) {
      listeners.add(listen);
      return () => listeners.delete(listen);
    },
    close() {
      post();
      channel?.close();
    },
  };
}

/** A tab with an older program may say things this one does not know. */
function isChange(one: unknown): one is Change {
  return typeof one === "object" && one !== null && "stream" in one && typeof one.stream === "string" && "whole" in one;
}
