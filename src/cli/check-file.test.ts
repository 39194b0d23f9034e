// A copy checked on the terminal: counted when it is whole, refused with its place when it is not.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { copyOf, filledPhone } from "../../tests/support/copies.js";
import { main } from "./main.js";

async function called(...args: readonly string[]) {
  const [out, err]: [string[], string[]] = [[], []];
  const exit = await main(["check-file", ...args], { out: (text) => out.push(text), err: (text) => err.push(text) });
  return { exit, data: out.length > 0 ? (JSON.parse(out.join("\n")) as unknown) : undefined, err: err.join("\n") };
}

test("FL4 a whole copy is counted; one cut short is refused with the reason; called wrongly, it tells how", async () => {
  const folder = await mkdtemp(join(tmpdir(), "copies-"));
  try {
    const bytes = new Uint8Array(
      await (await copyOf((await filledPhone(2)).store, { holds: "everything" })).arrayBuffer(),
    );
    const [whole, cut] = [join(folder, "whole.zip"), join(folder, "cut.zip")];
    await writeFile(whole, bytes);
    await writeFile(cut, bytes.subarray(0, bytes.length - 9));
    const { exit, data } = await called(whole);
    expect(exit).toBe(0);
    expect(data).toMatchObject({
      format: "leadlamp-copy/1",
      files: 5,
      counts: { cars: 1, visits: 1, entries: 5, stubs: 0 },
      kinds: { "car.begun": 1, picture: 2, reply: 1, "visit.opened": 1 },
    });
    const refused = await called(cut);
    expect([refused.exit, refused.err]).toEqual([1, `${cut}: files.cut-short`]);
    expect((await called(join(folder, "not there"))).exit).toBe(1);
    expect((await called()).exit).toBe(2);
  } finally {
    await rm(folder, { recursive: true });
  }
});
