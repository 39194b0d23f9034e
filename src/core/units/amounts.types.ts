/** What must not compile: adding kinds of quantity that do not meet. Checked by the type checker, never run. */
import {
  type Amount,
  amount,
  less,
  type Money,
  minus,
  money,
  numberOf,
  plus,
  ratioOf,
  sum,
  times,
  warmed,
  warmerBy,
} from "./index.js";

const play: Amount<"length"> = amount("length", 0.2);
const run: Amount<"length"> = amount("length", 0.05);
const tyre: Amount<"pressure"> = amount("pressure", 2.2);
const hub: Amount<"temperature"> = amount("temperature", 60);
const air: Amount<"temperature"> = amount("temperature", 20);
const rate: Money = money(9500);

export const compiles = [
  plus(play, run),
  minus(play, run),
  times(tyre, 2),
  warmerBy(hub, air),
  warmed(air, warmerBy(hub, air)),
  numberOf(play) + numberOf(run),
  ratioOf(play, run),
  sum(rate, rate),
] as const;

export const doesNotCompile = [
  // @ts-expect-error millimetres and bar have no sum
  () => plus(play, tyre),
  // @ts-expect-error nor a difference
  () => minus(tyre, play),
  // @ts-expect-error nor a ratio
  () => ratioOf(play, tyre),
  // @ts-expect-error a bare sign does not add amounts, not even of one quantity
  () => play + run,
  // @ts-expect-error millimetres and bar least of all
  () => play + tyre,
  // @ts-expect-error a length and a bare number have no sum
  () => plus(play, 0.1),
  // @ts-expect-error two temperatures have no sum
  () => plus(hub, air),
  // @ts-expect-error a temperature has no true zero to scale from
  () => times(hub, 2),
  // @ts-expect-error a temperature difference is no temperature
  () => warmerBy(hub, warmerBy(hub, air)),
  // @ts-expect-error a length is no pressure
  (): Amount<"pressure"> => play,
  // @ts-expect-error money is no bare number
  () => less(rate, 100),
  // @ts-expect-error nor a length
  () => sum(rate, play),
] as const;
