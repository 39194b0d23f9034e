/** Gives a checked sheet its edition. Computes no hash: the digest is handed in. */
import type { BuiltCommon, BuiltSheet } from "./built.js";
import type { Checked } from "./check.js";
import type { CheckedCommon } from "./check-common.js";
import { editionText } from "./edition.js";

/** SHA-256 of the UTF-8 bytes of a text, as 64 small hex digits. */
export type Digest = (text: string) => Promise<string>;

/** The sheet as it is shipped: texts apart, cases left behind, plans beside it, named by the hash of its meaning. */
export async function sealSheet({ sheet, plans, planVersion }: Checked, digest: Digest): Promise<BuiltSheet> {
  const { texts: _, ...meaning } = sheet;
  const { cases: __, ...bare } = meaning;
  return { sheet: bare, plans, planVersion, edition: await digest(editionText(meaning)) };
}

/** The shared files as they are shipped. Complaints judge nothing and leave the edition as it is. */
export async function sealCommon({ common, plans, planVersion }: CheckedCommon, digest: Digest): Promise<BuiltCommon> {
  const { texts: _, complaints, ...meaning } = common;
  const { cases: __, ...bare } = meaning;
  return { common: bare, complaints, plans, planVersion, edition: await digest(editionText(meaning)) };
}
