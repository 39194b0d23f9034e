// Files that are not what they should be: each refused whole, with the reason and where, and nothing is changed by it.
import { strToU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { bytesOf } from "../../../tests/store/sample.js";
import { archive, copyOf, filledPhone, good, type Loose, newStore, wholeOf } from "../../../tests/support/copies.js";
import { COPY_LIMITS, type CopyLimits, claimFault, type Entry, planStream, takeIn } from "../../core/record/index.js";
import { openCopy } from "./open.js";
import { sha256 } from "./parts.js";

let whole: File;
let loose: Loose;
let locked: File;
beforeAll(async () => {
  const { store } = await filledPhone();
  whole = await copyOf(store, { holds: "everything" });
  loose = unzipSync(new Uint8Array(await whole.arrayBuffer()));
  locked = await copyOf(store, { holds: "everything" }, "right one");
});

const picture = (): string => Object.keys(loose).find((name) => name.startsWith("pictures/")) ?? "";
const text = (name: string): string => new TextDecoder().decode(loose[name]);
const bytes = async (file: File): Promise<Uint8Array<ArrayBuffer>> => new Uint8Array(await file.arrayBuffer());
const fileOf = (content: Uint8Array): File => new File([new Uint8Array(content)], "some.zip");

/** The first thing wrong with a file: its code and where it stands. */
async function refused(file: File, passphrase?: string, limits: CopyLimits = COPY_LIMITS): Promise<string> {
  const opened = await openCopy(file, passphrase, undefined, limits);
  if (opened.ok) return "opened";
  const [first] = opened.problems;
  return [first?.code, first?.where.file, first?.where.line].filter((one) => one !== undefined).join(" ");
}

/** The archive with its manifest told anew. */
async function told(
  files: Loose,
  change: (manifest: Record<string, unknown>) => object = (same) => same,
): Promise<File> {
  const manifest = JSON.parse(text("manifest.json")) as Record<string, unknown>;
  const journal = files["journal.jsonl"] ?? new Uint8Array();
  manifest["journal"] = { bytes: journal.byteLength, sha256: await sha256(new Uint8Array(journal)) };
  return archive({ ...files, "manifest.json": strToU8(JSON.stringify(change(manifest))) });
}
/** The archive with other lines in its journal, rightly counted and hashed. */
const withLines = (lines: readonly string[], counted: number): Promise<File> =>
  told({ ...loose, "journal.jsonl": strToU8(lines.join("\n")) }, (manifest) => ({
    ...manifest,
    counts: { ...(manifest["counts"] as object), entries: counted },
  }));

test("FL4 put together again unchanged, an archive opens", async () => {
  expect(await refused(archive(loose))).toBe("opened");
});

describe("foreign files", () => {
  test("an empty file, a text, a picture, an archive of something else", async () => {
    for (const content of ["", "Dear Ines", "\u00ff\u00d8\u00ff\u00e0 a picture"])
      expect(await refused(new File([content], "letter.zip"))).toBe("files.foreign");
    expect(await refused(archive({ "holiday.txt": strToU8("sun") }))).toBe("files.foreign");
    expect(await refused(archive({ "manifest.json": strToU8('{"short_name":"an app"}') }))).toBe(
      "files.foreign manifest.json",
    );
  });

  test("a newer version is told as such, with its number", async () => {
    const newer = await told(loose, (manifest) => ({ ...manifest, format: "leadlamp-copy/3", more: [] }));
    const opened = await openCopy(newer);
    expect(opened.ok || opened.problems[0]).toMatchObject({ code: "files.newer", params: { version: 3 } });
    const journal = text("journal.jsonl").split("\n");
    expect(
      await refused(await withLines(['{"format":"leadlamp-journal/2"}', ...journal.slice(1)], journal.length - 2)),
    ).toBe("record.newer-format journal.jsonl 1");
  });
});

describe("damaged files", () => {
  test("cut off at any of thirty places, it is never taken for a shorter one", async () => {
    const content = await bytes(whole);
    for (let cut = 1; cut <= 30; cut++) {
      const code = await refused(fileOf(content.subarray(0, Math.floor((content.byteLength * cut) / 31))));
      expect(["files.cut-short", "files.foreign"]).toContain(code);
    }
  });

  test("one byte changed anywhere is found, or changes nothing that is read", async () => {
    const content = await bytes(whole);
    const { log } = good(await openCopy(whole));
    for (let at = 7; at < content.byteLength; at += Math.ceil(content.byteLength / 150)) {
      const changed = content.slice();
      changed[at] = (changed[at] ?? 0) ^ 0x55;
      const opened = await openCopy(fileOf(changed));
      if (opened.ok) expect(opened.value.log).toEqual(log);
      else expect(opened.problems[0]?.code).toMatch(/^files\./);
    }
  });

  test("a picture whose bytes are not those of its name", async () => {
    expect(await refused(archive({ ...loose, [picture()]: strToU8("another picture, as it were") }))).toBe(
      `files.damaged ${picture()}`,
    );
  });

  test("a file that is listed and not there; one that is there and not listed", async () => {
    const { [picture()]: _gone, ...rest } = loose;
    expect(await refused(archive(rest))).toBe(`files.missing ${picture()}`);
    const more = await bytesOf("one more");
    expect(await refused(archive({ ...loose, [`pictures/${more.hash}.jpg`]: more.bytes }))).toBe(
      `files.bad-name pictures/${more.hash}.jpg`,
    );
  });

  test("a journal other than its hash; a bad line, by its number; fewer lines than were counted", async () => {
    const lines = text("journal.jsonl").split("\n");
    expect(await refused(archive({ ...loose, "journal.jsonl": strToU8(lines.slice(0, 2).join("\n")) }))).toBe(
      "files.damaged journal.jsonl",
    );
    const bad = [...lines.slice(0, 3), '{"stream":"car:x"}', ...lines.slice(4)];
    expect(await refused(await withLines(bad, lines.length - 2))).toBe("record.bad-entry journal.jsonl 4");
    expect(await refused(await withLines(lines.slice(0, 3), lines.length - 2))).toBe("files.damaged journal.jsonl");
  });
});

describe("files that claim to be what they are not", () => {
  const claimed = (change: (manifest: Record<string, unknown>) => object): Promise<string> =>
    told(loose, change).then((file) => refused(file));

  test("FL14 a whole copy told to be one visit or one car, and the other way round", async () => {
    const two = await filledPhone(1);
    await filledPhone(1, two.store);
    const both = await copyOf(two.store, { holds: "everything" });
    const files = unzipSync(await bytes(both));
    for (const holds of ["visit", "car"]) {
      const list = JSON.parse(new TextDecoder().decode(files["manifest.json"])) as object;
      const lying = archive({ ...files, "manifest.json": strToU8(JSON.stringify({ ...list, holds })) });
      expect(await refused(lying)).toBe("files.claims manifest.json");
    }
    // One's own copy holds back nothing: what does is a file for others.
    expect(await claimed((manifest) => ({ ...manifest, keptBack: 1 }))).toBe("files.manifest manifest.json");
    expect(await claimed((manifest) => ({ ...manifest, holds: "new" }))).toBe("files.manifest manifest.json");
    expect(await claimed((manifest) => ({ ...manifest, since: "2026-03-01T10:00:00Z" }))).toBe(
      "files.manifest manifest.json",
    );
  });

  test("FL14 a file of one visit with the plan of another, or with the house's terms", async () => {
    const { store, car, visit } = await filledPhone(1);
    const other = await filledPhone(1);
    const plan = { ...(good(await other.store.entries(other.visit))[0] as Entry), stream: planStream(other.visit) };
    const log = [...good(await store.entries(car)), ...good(await store.entries(visit))];
    const counts = { cars: 1, visits: 1, entries: log.length + 1, stubs: 0 };
    expect(claimFault({ holds: "visit", counts }, [...log, plan])?.code).toBe("files.claims");
    expect(claimFault({ holds: "visit", counts }, [...log, { ...plan, stream: "house" }])?.code).toBe("files.claims");
    expect(claimFault({ holds: "visit", counts }, [...log, { ...plan, stream: planStream(visit) }])).toBeUndefined();
    expect(claimFault({ holds: "everything", counts }, [...log, { ...plan, stream: "house" }])).toBeUndefined();
  });

  test("FL14 more or fewer cars, visits or erased entries than its journal has", async () => {
    for (const name of ["cars", "visits", "stubs"])
      expect(
        await claimed((manifest) => ({ ...manifest, counts: { ...(manifest["counts"] as object), [name]: 7 } })),
      ).toBe("files.miscounted manifest.json");
  });

  test("FL14 a picture told to be a sheet, a sheet told to be a picture", async () => {
    const typed = (type: string) =>
      claimed((manifest) => ({
        ...manifest,
        files: (manifest["files"] as readonly { name: string }[]).map((one) => ({ ...one, type })),
      }));
    expect(await typed("application/json")).toBe("files.manifest manifest.json");
    expect(await typed("image/jpeg")).toBe("files.manifest manifest.json");
  });

  test("FL12 a list of what is lacking stands in format 2 and nowhere else", async () => {
    const lacking = [
      {
        hash: "0".repeat(64),
        stream: "visit:v",
        of: "Little one",
        what: "picture",
        name: "",
        at: "2026-03-01T10:00:00Z",
        why: "not-here",
      },
    ];
    expect(await claimed((manifest) => ({ ...manifest, lacking }))).toBe("files.manifest manifest.json");
    expect(await claimed((manifest) => ({ ...manifest, format: "leadlamp-copy/2" }))).toBe(
      "files.manifest manifest.json",
    );
    expect(await claimed((manifest) => ({ ...manifest, format: "leadlamp-copy/2", lacking }))).toBe("opened");
  });
});

describe("hostile files", () => {
  test.each([
    "../evil.sh",
    "/etc/passwd",
    "pictures/../../x.jpg",
    "C:\\x.jpg",
    "pictures\\x.jpg",
    "a/b/c/d/e.txt",
    "blob.zip",
  ])("a name that leads elsewhere: %s", async (name) => {
    expect(await refused(archive({ ...loose, [name]: strToU8("x") }))).toBe(`files.bad-name ${name}`);
  });

  test("the same name twice", async () => {
    const other = `pictures/${"0".repeat(64)}.jpg`;
    const content = await bytes(archive({ ...loose, [other]: strToU8("x") }));
    const [from, into] = [strToU8(other), strToU8(picture())];
    for (let at = 0; at + from.length <= content.length; at++)
      if (from.every((code, i) => content[at + i] === code)) content.set(into, at);
    expect(await refused(fileOf(content))).toBe(`files.twice ${picture()}`);
  });

  test("keys that reach for a prototype, in the list and in a line", async () => {
    const list = text("manifest.json").replace("{", '{"__proto__":{"volume":1},');
    expect(await refused(archive({ ...loose, "manifest.json": strToU8(list) }))).toBe("files.manifest manifest.json");
    const lines = text("journal.jsonl").split("\n");
    const line = (lines[1] ?? "").replace('"body":{', '"body":{"__proto__":{"polluted":true},');
    expect(await refused(await withLines([lines[0] ?? "", line, ...lines.slice(2)], lines.length - 2))).toBe(
      "record.bad-entry journal.jsonl 2",
    );
    expect(({} as { readonly polluted?: boolean }).polluted).toBeUndefined();
  });

  test("entries of the demo never come in from a file", async () => {
    const lines = text("journal.jsonl")
      .split("\n")
      .map((line) => line.replace(/"(car|visit):/g, '"$1:demo-'));
    expect(await refused(await withLines(lines, lines.length - 2))).toBe("files.demo");
  });
});

describe("files made to fill a phone", () => {
  const limits = {
    ...COPY_LIMITS,
    journalBytes: 400_000,
    fileBytes: 300_000,
    unpackedBytes: 600_000,
    smallBytes: 50_000,
  };

  test("much out of little is counted as it comes out, whatever the archive says of itself", async () => {
    const nothing = new Uint8Array(20_000_000);
    const bomb = archive({ ...loose, "journal.jsonl": nothing });
    expect(await refused(bomb)).toBe("files.bomb journal.jsonl");
    // The same with a length that is a lie.
    const content = await bytes(bomb);
    const view = new DataView(content.buffer);
    for (let at = 0; at + 4 <= content.byteLength; at++)
      if (view.getUint32(at, true) === nothing.byteLength) view.setUint32(at, 1_000, true);
    expect(await refused(fileOf(content))).toMatch(/^files\.(bomb|damaged|too-large) journal\.jsonl$/);
  });

  test("a file, all files together and the number of files have a most", async () => {
    const noise = crypto.getRandomValues(new Uint8Array(60_000));
    const large = {
      ...loose,
      "README.txt": new Uint8Array([...noise, ...noise, ...noise, ...noise, ...noise, ...noise]),
    };
    expect(await refused(archive(large), undefined, limits)).toBe("files.too-large README.txt");
    expect(await refused(archive(large), undefined, { ...limits, fileBytes: 400_000, unpackedBytes: 300_000 })).toBe(
      "files.too-large",
    );
    expect(await refused(whole, undefined, { ...limits, files: 3 })).toBe("files.too-large");
    expect(await refused(whole, undefined, { ...limits, volumeBytes: 100 })).toBe("files.too-large");
  });

  test("entries that lie over one another are refused before anything is unpacked", async () => {
    const content = await bytes(whole);
    const view = new DataView(content.buffer);
    const starts: number[] = [];
    for (let at = 0; at + 4 <= content.byteLength; at++)
      if (view.getUint32(at, true) === 0x02014b50) starts.push(at + 42);
    // The second begins where the first does.
    view.setUint32(starts[1] ?? 0, view.getUint32(starts[0] ?? 0, true), true);
    expect(await refused(fileOf(content))).toMatch(/^files\.damaged /);
  });

  // Offsets of the directory's fields: APPNOTE.TXT 6.3, 4.3.12.
  test.each([
    ["another lock of the archive's own", 8, (view: DataView, at: number) => view.setUint16(at, 1, true), "other-lock"],
    [
      "a way of packing other than none and deflate",
      10,
      (view: DataView, at: number) => view.setUint16(at, 12, true),
      "damaged",
    ],
    [
      "a sum that is not its bytes'",
      16,
      (view: DataView, at: number) => view.setUint32(at, view.getUint32(at, true) ^ 1, true),
      "damaged",
    ],
    [
      "fewer bytes than come out of it",
      24,
      (view: DataView, at: number) => view.setUint32(at, view.getUint32(at, true) - 1, true),
      "damaged",
    ],
  ] as const)("%s: told by the name of the file it is said of", async (_, field, change, code) => {
    const content = await bytes(archive(loose));
    const view = new DataView(content.buffer);
    for (let at = 0; at + 46 <= content.byteLength; at++) {
      if (view.getUint32(at, true) !== 0x02014b50) continue;
      const name = new TextDecoder().decode(content.subarray(at + 46, at + 46 + view.getUint16(at + 28, true)));
      if (name === "manifest.json") change(view, at + field);
    }
    expect(await refused(fileOf(content))).toBe(`files.${code} manifest.json`);
  });
});

describe("locked files", () => {
  test("no passphrase, the wrong one, the right one", async () => {
    expect(await refused(locked)).toBe("files.wants-passphrase");
    expect(await refused(locked, "wrong one")).toBe("files.wrong-passphrase");
    expect(await refused(locked, "right one")).toBe("opened");
  });

  test("cut off or changed inside, it does not unlock", async () => {
    const content = await bytes(locked);
    for (const cut of [300, content.byteLength - 1])
      expect(await refused(fileOf(content.subarray(0, cut)), "right one")).toBe("files.damaged");
    content[content.byteLength - 40] = (content[content.byteLength - 40] ?? 0) ^ 1;
    expect(await refused(fileOf(content), "right one")).toBe("files.damaged");
  });

  test("locked for a key, in armour, or with more work than a phone has memory for", async () => {
    const head = (lines: string): File => new File([`age-encryption.org/v1\n${lines}\n--- mac\n`], "x.age");
    expect(await refused(head("-> X25519 abc\nxyz"), "any")).toBe("files.other-lock");
    expect(await refused(head(`-> scrypt ${"A".repeat(22)} 30\nxyz`), "any")).toBe("files.too-heavy");
    expect(await refused(new File(["-----BEGIN AGE ENCRYPTED FILE-----\n"], "x.age"), "any")).toBe("files.other-lock");
  });
});

test("FL5 what is refused changes nothing on the phone, half-way through too", async () => {
  const phone = await filledPhone();
  const before = await wholeOf(phone.store);
  const copy = good(await openCopy(whole));
  // One picture turns out to be something else when it is fetched.
  const lying = { ...copy, blob: async (hash: string) => ({ ...(await copy.blob(hash)), bytes: new Uint8Array([1]) }) };
  const taken = await takeIn(phone.store, lying);
  expect(taken.ok || taken.problems[0]?.code).toBe("record.blob-hash");
  expect(await wholeOf(phone.store)).toEqual(before);
  expect((await wholeOf(newStore())).log).toEqual([]);
});
