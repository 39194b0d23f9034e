import { expect, test } from "vitest";
import { takeLaunched } from "./launched.js";

test("each file the phone opened the app with is taken; a folder among them is passed over", async () => {
  const sheet = new File(["id: own"], "own.yaml");
  let give: (launch: object) => void = () => undefined;
  const taken: string[] = [];
  takeLaunched({ launchQueue: { setConsumer: (to: typeof give) => (give = to) } }, ({ name }) => taken.push(name));
  give({ files: [{ getFile: async () => sheet }, {}] });
  give({});
  await Promise.resolve();
  expect(taken).toEqual(["own.yaml"]);
});

test("a browser that opens no files is left alone", () => {
  const taken: File[] = [];
  takeLaunched({}, (file) => taken.push(file));
  expect(taken).toEqual([]);
});
