/** What was claimed of a car somebody looked at to buy it, as a hand-over is given it. Types only. */

export interface ClaimTold {
  readonly id: string;
  /** As it was said or stood. */
  readonly words: string;
  readonly from: "advert" | "seller" | "papers";
  /** Absent: nobody asked for it, or two people say different things of it. */
  readonly seen?: { readonly word: "shown" | "not-shown" | "otherwise"; readonly words: string } | undefined;
}
