/** What a quiet visit keeps covered: uncovered by a step of its own, until one is back on the round. Never kept. */
import { signal } from "@preact/signals";

const uncovered = signal<string | undefined>(undefined);

export const isUncovered = (visit: string): boolean => uncovered.value === visit;
export const uncover = (visit: string): void => {
  uncovered.value = visit;
};
export const coverAgain = (): void => {
  uncovered.value = undefined;
};
