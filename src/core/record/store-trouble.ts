/** What a failure of storage means: try again, tell, or our own mistake. Knows error names, no storage. */
import { fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import type { Health } from "./store.js";
import type { Watched } from "./watched.js";

/** Thrown by an engine that has no storage to work on, with what to show. */
export class NoStorage extends Error {
  constructor(readonly health: Health) {
    super(`Storage is ${health.is}`);
    this.name = "NoStorage";
  }
}

/** A dead connection is opened anew at most so often for one operation (design: three tries). */
export const TRIES = 3;

/** Name of the error that says that storage did not answer in time. */
export const NO_ANSWER = "TimeoutError";

/** Errors of a browser's storage that are nobody's mistake here, by name; anything else is ours and is thrown on. */
const MEANING: Readonly<Record<string, Health["is"]>> = {
  QuotaExceededError: "full",
  NS_ERROR_DOM_INDEXEDDB_QUOTA_ERR: "full",
  NS_ERROR_FILE_NO_DEVICE_SPACE: "full",
  SecurityError: "refused",
  NotAllowedError: "refused",
  VersionError: "closed-by-newer",
  // The handle or the transaction died: backgrounding on iOS, cleared data, a browser's own error.
  InvalidStateError: "lost",
  TransactionInactiveError: "lost",
  AbortError: "lost",
  UnknownError: "lost",
  [NO_ANSWER]: "lost",
  NotReadableError: "lost",
  NotFoundError: "lost",
};

interface StorageTrouble {
  readonly health: Health;
  readonly problem: Problem;
}

/** What this error says about storage; undefined when it says nothing about it. */
export function storageTrouble(error: unknown): StorageTrouble | undefined {
  if (error instanceof NoStorage) return troubleOf(error.health);
  const name = nameOf(error);
  const is = Object.hasOwn(MEANING, name) ? MEANING[name] : undefined;
  return is && troubleOf({ is, why: name });
}

function troubleOf(health: Health): StorageTrouble {
  return {
    health,
    problem: problem(`record.store-${health.is}`, {}, health.why === undefined ? {} : { why: health.why }),
  };
}

function nameOf(error: unknown): string {
  const isNamed = typeof error === "object" && error !== null && "name" in error && typeof error.name === "string";
  return isNamed ? String(error.name) : "";
}

/**
 * Runs an operation that may be repeated (entries carry nonces): a dead connection is dropped and the operation
 * tried again, three tries in all. Leaves `health` telling how it ended; `isWrite` says whether success proves room.
 */
export async function withTries<T>(
  attempt: () => Promise<T>,
  drop: () => void,
  health: Watched<Health>,
  isWrite: boolean,
): Promise<Result<T>> {
  for (let left = TRIES; ; left--) {
    try {
      const value = await attempt();
      const { is } = health.value;
      // Reading works while there is no room: only a write shows that there is room again. And an operation that was
      // under way when a newer tab asked us to leave does not undo that.
      if (is !== "closed-by-newer" && (isWrite || is !== "full")) health.set({ is: "open" });
      return ok(value);
    } catch (error) {
      const trouble = storageTrouble(error);
      if (!trouble) throw error;
      const isDead = trouble.health.is === "lost" && !(error instanceof NoStorage);
      if (isDead) drop();
      // Whoever waited for an answer in vain has waited long enough: the next call tries anew.
      if (isDead && left > 1 && trouble.health.why !== NO_ANSWER) continue;
      health.set(trouble.health);
      return fail(trouble.problem);
    }
  }
}
