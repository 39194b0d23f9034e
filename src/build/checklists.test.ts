import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build, createServer, type Rolldown } from "vite";
import { afterEach, beforeEach, expect, test } from "vitest";
import { MINI_COMMON, MINI_SHEET } from "../../tests/support/mini-parts.js";
import { checklists } from "./checklists.js";

let dir = "";
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), "modules-"));
  const parts = [
    ...Object.entries(MINI_COMMON).map(([name, text]) => [`lists/common/${name}`, text] as const),
    ...Object.entries(MINI_SHEET).map(([name, text]) => [`lists/hub/${name}`, text] as const),
    ["entry.js", 'export { sheets, common, complaints } from "virtual:leadlamp/index";\n'] as const,
  ];
  for (const [name, text] of parts) {
    await mkdir(dirname(join(dir, name)), { recursive: true });
    await writeFile(join(dir, name), text);
  }
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const settings = () => ({
  root: dir,
  configFile: false as const,
  logLevel: "silent" as const,
  plugins: [checklists({ dir: join(dir, "lists") })],
});

async function built(): Promise<string> {
  const outDir = join(dir, "out");
  await build({
    ...settings(),
    build: {
      outDir,
      minify: false,
      lib: { entry: join(dir, "entry.js"), formats: ["es"], fileName: () => "entry.mjs" },
    },
  });
  return join(outDir, "entry.mjs");
}

test("the built index lists sheets and loads each with its plans, texts apart, by language", async () => {
  const { sheets, common, complaints } = await import(/* @vite-ignore */ await built());
  expect(sheets).toMatchObject([{ id: "hub", titles: { en: "Hubs" } }]);
  const hub = await sheets[0].load();
  expect(hub.edition).toMatch(/^[0-9a-f]{64}$/);
  expect(hub.edition.slice(0, 16)).toBe(sheets[0].edition);
  expect(hub.sheet.points).toHaveLength(3);
  for (const left of ["texts", "cases"]) expect(hub.sheet).not.toHaveProperty(left);
  expect(hub.plans["rules/hub.r1/when"]).toMatchObject({ v: hub.planVersion, gives: "yes" });
  expect(await sheets[0].source()).toEqual({ sheet: hub.sheet, edition: hub.edition });
  expect((await sheets[0].texts.en()).faults["hub.race"]).toEqual({ says: "The race breaks up." });
  expect((await common.load()).common.places).toHaveLength(6);
  expect((await common.load()).common).not.toHaveProperty("cases");
  expect((await common.load()).edition.slice(0, 16)).toBe(common.edition);
  expect((await common.texts.en()).places.FL).toBe("Front left");
  for (const frozen of [await common.load(), (await common.load()).common, await common.texts.en()])
    expect(frozen).not.toHaveProperty("complaints");
  expect(await complaints.en()).toEqual({
    listed: [{ id: "sym.hum", suspects: [{ suspect: "hub", weight: 3 }], points: ["hub.spin", "hub.float@axle"] }],
    texts: { "sym.hum": { name: "Hum", says: ["it hums"], suspects: { hub: "Hub" } } },
  });
});

test("sheet, texts and shared files lie in pieces of their own, and no parser with them", async () => {
  const outDir = join(dir, "out");
  const result = await build({
    ...settings(),
    build: {
      outDir,
      write: false,
      lib: { entry: join(dir, "entry.js"), formats: ["es"], fileName: () => "entry.mjs" },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (!first || !("output" in first)) throw new Error("nothing was built");
  const chunks = first.output.filter((o): o is Rolldown.OutputChunk => o.type === "chunk");
  const modules = chunks.map((c) => Object.keys(c.modules).map((id) => id.replace("\0", "").replace(dir, "")));
  expect(modules.map((m) => m.sort()).sort()).toEqual(
    [
      // With what takes data and words apart again.
      ["/entry.js", fileURLToPath(new URL("../core/sheet/weave.ts", import.meta.url)), "virtual:leadlamp/index"],
      ["virtual:leadlamp/common"],
      ["virtual:leadlamp/complaints/en"],
      ["virtual:leadlamp/plans/common"],
      ["virtual:leadlamp/plans/hub"],
      ["virtual:leadlamp/sheet/hub"],
    ]
      .map((m) => m.sort())
      .sort(),
  );
});

test("a broken sheet stops the build with file, line and column of every problem", async () => {
  const rules = join(dir, "lists/hub/rules.yaml");
  const text = await readFile(rules, "utf8");
  await writeFile(rules, text.replace('"rough"', '"ruff"').replace("[job.hub.renew]", "[job.hub.renw]"));
  const error = await built().then(
    () => "built",
    (e: unknown) => (e instanceof Error ? e.message : String(e)),
  );
  expect(error.replaceAll(dir, "DIR")).toContain(
    [
      "DIR/lists/hub/rules.yaml:14:12 unknown job “job.hub.renw”; expected job.hub.renew",
      "DIR/lists/hub/rules.yaml:9:24 the point has no word “ruff”; it has rough, tight, smooth",
    ].join("\n"),
  );
});

test("a module nobody made is told by name", async () => {
  await writeFile(join(dir, "entry.js"), 'export { sheet } from "virtual:leadlamp/sheet/nave";\n');
  await expect(built()).rejects.toThrow("There is no module virtual:leadlamp/sheet/nave.");
});

test("while developing, a changed part gives the changed sheet and reloads the page", async () => {
  const server = await createServer({ ...settings(), server: { middlewareMode: true, ws: false }, appType: "custom" });
  try {
    const load = async () => {
      const [hub] = (await server.ssrLoadModule("virtual:leadlamp/index"))["sheets"];
      return (await hub.source()).sheet.label;
    };
    const reloaded = new Promise<void>((done) => {
      const { send } = server.ws;
      server.ws.send = (...args: readonly unknown[]) => {
        const [payload] = args;
        if (typeof payload === "object" && payload !== null && "type" in payload && payload.type === "full-reload")
          done();
        Reflect.apply(send, server.ws, args);
      };
    });
    expect(await load()).toBe("Hub 1");
    const file = join(dir, "lists/hub/sheet.yaml");
    await writeFile(file, (await readFile(file, "utf8")).replace("Hub 1", "Hub 2"));
    // Told by hand: how soon a file system tells is not what is tested.
    server.watcher.emit("change", file);
    await reloaded;
    expect(await load()).toBe("Hub 2");
  } finally {
    await server.close();
  }
});
