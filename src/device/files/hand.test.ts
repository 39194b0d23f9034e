import { expect, test } from "vitest";
import type { FileContent } from "../../core/record/files.js";
import { readyFile, type Surroundings } from "./hand.js";

const content: FileContent = { name: "visit.json", type: "application/json", bytes: new TextEncoder().encode("{}") };

/** A page that writes down what was done to it. */
function page(navigator: Surroundings["navigator"]) {
  const log: string[] = [];
  const later: (() => void)[] = [];
  const link = {
    href: "",
    download: "",
    hidden: false,
    click: () => log.push(`click ${link.download} ${link.href}`),
    remove: () => log.push("remove"),
  };
  const surroundings = {
    navigator,
    document: { createElement: () => link, body: { append: () => log.push("append") } },
    urls: {
      createObjectURL: (file: Blob) => `blob:${file.size}`,
      revokeObjectURL: (url: string) => log.push(`revoke ${url}`),
    },
    later: (act: () => void) => later.push(act),
  };
  // Only the few members readyFile uses are there.
  return { log, later, surroundings: surroundings as unknown as Surroundings };
}

const named = (name: string): Error => Object.assign(new Error(name), { name });

test("a phone with a share sheet for the type is given the file itself, name and type kept", async () => {
  const given: File[] = [];
  const { surroundings, log } = page({
    canShare: () => true,
    share: async ({ files }) => {
      given.push(...files);
    },
  });
  expect(await readyFile(content, surroundings).hand()).toBe("shared");
  expect(given.map((file) => [file.name, file.type, file.size])).toEqual([["visit.json", "application/json", 2]]);
  expect(log).toEqual([]);
});

test("the share sheet is asked within the tap itself", () => {
  let asked = false;
  const { surroundings } = page({
    canShare: () => true,
    share: () => {
      asked = true;
      return new Promise(() => undefined);
    },
  });
  void readyFile(content, surroundings).hand();
  expect(asked).toBe(true);
});

test("without a share sheet, or for a type it refuses, the file is downloaded and its address taken back", async () => {
  for (const navigator of [{}, { canShare: () => false, share: async () => undefined }]) {
    const { surroundings, log, later } = page(navigator);
    expect(await readyFile(content, surroundings).hand()).toBe("downloaded");
    expect(log).toEqual(["append", "click visit.json blob:2", "remove"]);
    for (const act of later) act();
    expect(log.at(-1)).toBe("revoke blob:2");
  }
});

test("closing the share sheet is no error", async () => {
  const { surroundings } = page({ canShare: () => true, share: () => Promise.reject(named("AbortError")) });
  expect(await readyFile(content, surroundings).hand()).toBe("stopped");
});

test("a tap that is too long ago asks for another one", async () => {
  const { surroundings, log } = page({ canShare: () => true, share: () => Promise.reject(named("NotAllowedError")) });
  expect(await readyFile(content, surroundings).hand()).toBe("tap-again");
  expect(log).toEqual([]);
});

test("a share sheet that fails on the file leaves the download", async () => {
  const { surroundings } = page({ canShare: () => true, share: () => Promise.reject(named("DataError")) });
  expect(await readyFile(content, surroundings).hand()).toBe("downloaded");
});
