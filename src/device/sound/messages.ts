/** What passes between the page and the worker that takes recordings apart: samples there, what was heard back. Types only. */

export interface Samples {
  /** One channel, -1 to 1. */
  readonly samples: Float32Array<ArrayBuffer>;
  /** Samples a second. */
  readonly rate: number;
}
