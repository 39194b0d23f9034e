// Packing beside the screen: one worker for each file, one question at a time, let go of when it is over or broke.
import { expect, test } from "vitest";
import type { PackAnswer, PackRequest } from "./messages.js";
import { type PackWorker, packerWith } from "./packer.js";

/** Workers that answer as told, and what became of them. */
function workers(answers: (request: PackRequest) => readonly PackAnswer[]) {
  const asked: string[] = [];
  const handedOver: number[] = [];
  let ended = 0;
  const make = (): PackWorker => {
    const worker: PackWorker = {
      onmessage: null,
      onerror: null,
      terminate: () => {
        ended++;
      },
      postMessage(request, transfer) {
        asked.push(request.do);
        handedOver.push(transfer.length);
        queueMicrotask(() => {
          for (const data of answers(request)) worker.onmessage?.({ data } as MessageEvent<PackAnswer>);
        });
      },
    };
    return worker;
  };
  return { make, asked, handedOver, ended: () => ended };
}

test("entries go over in the order they were added, bytes without another copy, and the worker is let go", async () => {
  const file = new File([], "copy.zip");
  const { make, asked, handedOver, ended } = workers((request) => {
    if (request.do === "begin") return [{ is: "begun" }];
    return request.do === "end" ? [{ is: "ended", file }] : [{ is: "added", bytes: 1, sha256: "x" }];
  });
  const packing = packerWith(make).pack("copy.zip");
  const both = [packing.add("README.txt", ["page"]), packing.add("pictures/a.jpg", [new Uint8Array([1, 2])])];
  expect(await Promise.all(both)).toEqual([
    { bytes: 1, sha256: "x" },
    { bytes: 1, sha256: "x" },
  ]);
  expect(await packing.end()).toBe(file);
  expect([asked, handedOver, ended()]).toEqual([["begin", "add", "add", "end"], [0, 0, 1, 0], 1]);
});

test("a refused file tells why and how far it had come, and its worker is let go", async () => {
  const problems = [{ code: "files.damaged", where: {}, params: {} }];
  const { make, ended } = workers(() => [
    { is: "far", done: 3, all: 9 },
    { is: "refused", problems },
  ]);
  const told: number[] = [];
  const opened = await packerWith(make).open(new File([], "x"), undefined, (done) => told.push(done));
  expect([opened, told, ended()]).toEqual([{ ok: false, problems }, [3], 1]);
});

test("a worker that broke is told as broken, never as a file found faulty", async () => {
  const { make, ended } = workers(() => [{ is: "broke", says: "out of memory" }]);
  await expect(packerWith(make).open(new File([], "x"), "secret", () => undefined)).rejects.toThrow("out of memory");
  expect(ended()).toBe(1);
});

test("a worker that broke while a file is written is let go, at whichever step", async () => {
  for (const step of ["begin", "add", "end"] as const) {
    const { make, ended } = workers((request) => {
      if (request.do === step) return [{ is: "broke", says: "out of memory" }];
      return request.do === "begin" ? [{ is: "begun" }] : [{ is: "added", bytes: 1, sha256: "x" }];
    });
    const packing = packerWith(make).pack("copy.zip");
    const written = packing.add("README.txt", ["page"]).then(() => packing.end());
    await expect(written).rejects.toThrow("out of memory");
    expect(ended()).toBeGreaterThan(0);
  }
});
