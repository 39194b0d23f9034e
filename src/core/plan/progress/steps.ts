/** Steps told by several people on several phones, in the order they happened. Knows no sort of step. */
import type { IsoDate } from "../terms.js";

/** What stands, in the order of showing. */
export type Told<Body> = readonly { readonly value: Body }[];

/** By the day each is said to have happened on; on one day in the order of showing. */
export const inOrder = <Body extends { readonly on: IsoDate }>(told: Told<Body>): readonly Body[] =>
  told.map(({ value }) => value).sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
