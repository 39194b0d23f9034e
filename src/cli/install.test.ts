import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { installIsStale, nodeIsNewEnough } from "./install.mjs";

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "leadlamp-install-"));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const WANTED = {
  "": { version: "0.1.0" },
  "node_modules/lamp": { version: "1.0.0" },
  "node_modules/only-elsewhere": { version: "1.0.0", optional: true },
};

function lock(packages: object): void {
  writeFileSync(join(root, "package-lock.json"), JSON.stringify({ packages }));
}
function installed(packages: Record<string, object>): void {
  for (const folder of Object.keys(packages)) {
    mkdirSync(join(root, folder), { recursive: true });
    writeFileSync(join(root, folder, "package.json"), "{}");
  }
  mkdirSync(join(root, "node_modules"), { recursive: true });
  writeFileSync(join(root, "node_modules", ".package-lock.json"), JSON.stringify({ packages }));
}

test("a bare clone needs installing", () => {
  lock(WANTED);
  expect(installIsStale(root)).toBe(true);
});

test("what matches the lock file is left alone, packages for other systems or not", () => {
  lock(WANTED);
  installed({ "node_modules/lamp": { version: "1.0.0" } });
  expect(installIsStale(root)).toBe(false);
});

test("another version, a missing package or an emptied folder needs installing", () => {
  lock(WANTED);
  installed({ "node_modules/lamp": { version: "1.0.1" } });
  expect(installIsStale(root)).toBe(true);
  installed({});
  expect(installIsStale(root)).toBe(true);
  installed({ "node_modules/lamp": { version: "1.0.0" } });
  rmSync(join(root, "node_modules", "lamp"), { recursive: true });
  expect(installIsStale(root)).toBe(true);
});

test("an unreadable note of what is installed needs installing", () => {
  lock(WANTED);
  installed({ "node_modules/lamp": { version: "1.0.0" } });
  writeFileSync(join(root, "node_modules", ".package-lock.json"), "{ half");
  expect(installIsStale(root)).toBe(true);
});

test("Node older than 20.19 is refused", () => {
  expect(nodeIsNewEnough("20.18.9")).toBe(false);
  expect(nodeIsNewEnough("18.20.0")).toBe(false);
  expect(nodeIsNewEnough("20.19.0")).toBe(true);
  expect(nodeIsNewEnough("22.0.0")).toBe(true);
});
