/** The store in memory, for the contract. */
import { memoryWorld, openMemoryStore } from "../../src/core/record/index.js";
import { bytesOf, fresh } from "./sample.js";
import type { Bench, Fault, Subject } from "./subject.js";

export const memorySubject: Subject = { name: "in memory", bench: async () => bench() };

function bench(): Bench {
  const world = memoryWorld();
  let ordered: Fault | undefined;
  let operations = 0;
  const fault = (): void => {
    operations += 1;
    if (!ordered || (ordered.forEver ? operations < ordered.at : operations !== ordered.at)) return;
    const error = new Error(`ordered: ${ordered.error}`);
    error.name = ordered.error;
    throw error;
  };
  const hashOf = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> =>
    (await bytesOf(new TextDecoder().decode(bytes))).hash;
  return {
    open: () => openMemoryStore(world, { nonce: () => fresh("w"), hashOf, fault }),
    nonce: () => fresh(),
    order: (next) => {
      ordered = next;
      operations = 0;
    },
    operations: () => operations,
    another: async () => bench(),
    close: async () => undefined,
  };
}
