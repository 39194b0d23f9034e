/** What the storage contract is run on, and how a check says what went wrong. Knows no test runner. */

import type { Store } from "../../src/core/record/index.js";
import { canonicalText } from "../../src/core/record/merge.js";
import type { Result } from "../../src/core/terms/index.js";

/** Failures to order: the `at`th operation from now, counted from 1, fails with an error of this name. */
export interface Fault {
  readonly at: number;
  readonly error: string;
  readonly forEver: boolean;
}

/** One name's worth of storage; every store opened on it is a tab. */
export interface Bench {
  open(): Store;
  /** A nonce as the device makes them: such drafts go the quick way. */
  nonce(): string;
  /** Orders a fault; undefined: none from now on. Counting begins anew. */
  order(fault: Fault | undefined): void;
  /** Operations since the last order. */
  operations(): number;
  /** A fresh one beside this, closed with it. */
  another(): Promise<Bench>;
  close(): Promise<void>;
}

export interface Subject {
  readonly name: string;
  bench(): Promise<Bench>;
}

export interface Check {
  readonly name: string;
  run(bench: Bench): Promise<void>;
}

export function same(is: unknown, should: unknown, what: string): void {
  const [a, b] = [canonicalText(is), canonicalText(should)];
  if (a !== b) throw new Error(`${what}\n  is     ${a}\n  should ${b}`);
}

export function holds(condition: boolean, what: string): void {
  if (!condition) throw new Error(what);
}

/** The value of an answer that must be good. */
export function good<T>(result: Result<T>, what: string): T {
  if (!result.ok) throw new Error(`${what}: ${canonicalText(result.problems)}`);
  return result.value;
}

/** The code of an answer that must be bad. */
export function bad<T>(result: Result<T>, what: string): string {
  if (result.ok) throw new Error(`${what} was not refused`);
  return result.problems.map(({ code }) => code).join(" ");
}

/** Waits until it is true, or says what never became so. */
export async function until(condition: () => boolean, what: string, withinMs = 20_000): Promise<void> {
  const end = Date.now() + withinMs;
  while (!condition()) {
    if (Date.now() > end) throw new Error(`never: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

/** Tries until the answer is good: for stores whose patience is so short that a busy machine may outlast it. */
export async function eventually<T>(work: () => Promise<Result<T>>, what: string): Promise<T> {
  const end = Date.now() + 20_000;
  for (;;) {
    const result = await work();
    if (result.ok || Date.now() > end) return good(result, what);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
