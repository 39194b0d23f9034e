/** What a tab believes about where its streams stand, so that keeping need not wait to ask. Never trusted unchecked. */

import type { Belief } from "./append-on.js";
import type { Draft } from "./contract.js";
import type { Head } from "./shelf.js";

export class Beliefs {
  #writer: string | undefined;
  readonly #heads = new Map<string, Head>();

  /** A belief for these drafts; undefined when there is none for all of them, or when they do more than add. */
  about(drafts: readonly Draft[]): Belief | undefined {
    if (this.#writer === undefined) return undefined;
    const heads = new Map<string, Head>();
    for (const { stream, kind } of drafts) {
      const head = this.#heads.get(stream);
      if (!head || kind === "erase") return undefined;
      heads.set(stream, head);
    }
    return { writer: this.#writer, heads };
  }

  learn({ writer, heads }: Belief): void {
    if (writer !== this.#writer) this.forgetAll();
    this.#writer = writer;
    for (const [stream, head] of heads) this.#heads.set(stream, head);
  }

  forget(streams: Iterable<string>): void {
    for (const stream of streams) this.#heads.delete(stream);
  }

  forgetAll(): void {
    this.#writer = undefined;
    this.#heads.clear();
  }
}
