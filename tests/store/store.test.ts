/** Runs the storage contract in memory and on a stand-in for IndexedDB. The real browser runs it in tests/e2e. */
import "fake-indexeddb/auto";
import { test } from "vitest";
import { contract } from "./contract.js";
import { faults } from "./faults.js";
import { indexedDbSubject } from "./indexeddb-subject.js";
import { lifecycle } from "./lifecycle.js";
import { memorySubject } from "./memory-subject.js";

/** Nothing here takes a second; a busy machine may take many. */
const PATIENT = 60_000;

for (const subject of [memorySubject, indexedDbSubject("on a stand-in for IndexedDB")]) {
  for (const { name, run } of [...contract, ...faults]) {
    test(`${subject.name}: ${name}`, { timeout: PATIENT }, async () => {
      const bench = await subject.bench();
      try {
        await run(bench);
      } finally {
        await bench.close();
      }
    });
  }
}

for (const { name, run } of lifecycle) test(`on a stand-in for IndexedDB: ${name}`, { timeout: PATIENT }, run);
