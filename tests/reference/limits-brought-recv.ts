/** How a value of a chosen size is brought about under each limit of the parts-received sheet. Refuses to know any edge. */
import { type Applies, type Brought, mm, plain, type Said } from "./limit-brought.js";

const LINE = "line-1";
/** A new part this much larger than the other. */
const against = (point: string, field: string, size: number): Brought => ({
  at: LINE,
  says: (value) => ({
    [`recv.${point}.${field}@${LINE}`]: mm(size),
    [`recv.${point}.new@${LINE}`]: mm(size + value),
  }),
});
const made = (of: string): { readonly says: Said } => ({ says: { [`recv.age.of@${LINE}`]: of } });

export const RECV_BROUGHT: Readonly<Record<string, Brought>> = {
  "recv.seat_off": against("seat", "old", 25),
  "recv.width_off": against("width", "old", 40),
  "recv.free_off": against("free", "old", 300),
  "recv.cord_off": against("cord", "ordered", 2),
  "recv.age": plain(`recv.age.made@${LINE}`, "mo"),
};

export const RECV_APPLIES: Applies = {
  "lim.rubber-age": made("seal"),
  "lim.belt-age": made("belt"),
  "lim.glue-age": made("glue"),
};
