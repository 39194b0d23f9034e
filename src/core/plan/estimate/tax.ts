/**
 * Tax on amounts by rate, rounded the way and at the level a profile says. Exact until then. Knows no country: that EU
 * law leaves way and level to its states is in the opinions on CJEU C-484/06 and C-302/07.
 */
import { roundedQuotient } from "../../units/index.js";
import { allot, ratio } from "./exact.js";
import type { TaxProfile } from "./house-terms.js";

/** An amount without tax, in minor units, and the rate it falls under. May be negative: a credit. */
export interface Taxed {
  readonly group: string;
  readonly net: number;
}

/** What falls under one rate, and its tax. */
export interface GroupTax {
  readonly group: string;
  readonly basisPoints: number;
  readonly net: number;
  readonly tax: number;
}

/** Basis points in the whole. */
const WHOLE = 10_000n;

/** Tax by rate, in the profile's order, a rate that nothing falls under left out. */
export function taxOn(
  lines: readonly Taxed[],
  profile: Pick<TaxProfile, "groups" | "rounding" | "level" | "digits">,
  minorDigits: number,
): readonly GroupTax[] {
  const digits = profile.digits ?? minorDigits;
  // one step of the asked rounding is 10^(minorDigits − digits) minor units: a whole number of them, or a fraction
  const coarse = 10n ** BigInt(Math.max(0, minorDigits - digits));
  const fine = 10n ** BigInt(Math.max(0, digits - minorDigits));
  const steps = (taxed: bigint) => roundedQuotient(taxed * fine, WHOLE * coarse, profile.rounding);
  const inMinor = (counted: bigint) => Number(roundedQuotient(counted * coarse, fine, profile.rounding));
  const groups = profile.groups
    .map(({ id, basisPoints }) => {
      const nets = lines.filter(({ group }) => group === id).map(({ net }) => BigInt(net));
      const net = nets.reduce((sum, one) => sum + one, 0n);
      return { group: id, basisPoints, nets, net, exact: net * BigInt(basisPoints) };
    })
    .filter(({ nets }) => nets.length > 0);
  const told = (tax: (group: (typeof groups)[number], index: number) => number): readonly GroupTax[] =>
    groups.map((one, i) => ({
      group: one.group,
      basisPoints: one.basisPoints,
      net: Number(one.net),
      tax: tax(one, i) || 0,
    }));
  if (profile.level === "line")
    return told(({ nets, basisPoints }) =>
      inMinor(nets.reduce((sum, net) => sum + steps(net * BigInt(basisPoints)), 0n)),
    );
  if (profile.level === "group") return told(({ exact }) => inMinor(steps(exact)));
  const whole = inMinor(steps(groups.reduce((sum, { exact }) => sum + exact, 0n)));
  // shared out in the same coarse steps, so that every rate's tax is a figure the rounding allows
  const shares = allot(
    whole / Number(coarse),
    groups.map(({ exact }) => ratio(exact, WHOLE * coarse)),
  );
  return told((_, i) => (shares[i] ?? 0) * Number(coarse));
}
