/** A value others are told of when it changes. Refuses to know any screen. */
export class Watched<T> {
  readonly #listeners = new Set<(value: T) => void>();
  #value: T;

  constructor(value: T) {
    this.#value = value;
  }

  get value(): T {
    return this.#value;
  }

  /** Sets and tells, unless nothing changed in the reader's eyes. */
  set(value: T): void {
    if (JSON.stringify(value) === JSON.stringify(this.#value)) return;
    this.#value = value;
    for (const listen of [...this.#listeners]) listen(value);
  }

  /** Told from now on; returns how to stop. */
  watch(listen: (value: T) => void): () => void {
    this.#listeners.add(listen);
    return () => this.#listeners.delete(listen);
  }
}
