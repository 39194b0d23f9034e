import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fileFor, type Serving, serve } from "./serve.js";

let top: string;
let serving: Serving;
const PAGE = `<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;; script-src &#39;self&#39;">`;

beforeAll(async () => {
  top = mkdtempSync(join(tmpdir(), "leadlamp-serve-"));
  mkdirSync(join(top, "dist", "assets"), { recursive: true });
  writeFileSync(join(top, "dist", "index.html"), PAGE);
  writeFileSync(join(top, "dist", "assets", "main-1a2b.js"), "export const lamp = 1;\n".repeat(50));
  writeFileSync(join(top, "dist", ".hidden"), "hidden");
  writeFileSync(join(top, "secret.txt"), "secret");
  serving = await serve({ dir: join(top, "dist"), port: 0, under: "/lamp/" });
});
afterAll(async () => {
  await serving.close();
  rmSync(top, { recursive: true, force: true });
});

test("the page is served under its folder with the page's own policy as a header, and may not be framed", async () => {
  const answer = await fetch(serving.address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toBe(PAGE);
  expect(answer.headers.get("content-security-policy")).toBe(
    "default-src 'none'; script-src 'self'; frame-ancestors 'none'",
  );
  expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
  expect(answer.headers.get("cache-control")).toBe("no-cache");
});

test("scripts are typed, squeezed and kept for good, since their names carry their content", async () => {
  const answer = await fetch(`${serving.address}assets/main-1a2b.js`);
  expect(answer.headers.get("content-type")).toMatch(/^text\/javascript/);
  expect(answer.headers.get("cache-control")).toContain("immutable");
  expect(answer.headers.get("content-encoding")).toBe("gzip");
  expect(await answer.text()).toHaveLength(50 * 23);
});

test("anything else is not there", async () => {
  for (const path of ["nothing.js", "assets", ".hidden", "assets/../.hidden"]) {
    expect((await fetch(serving.address + path)).status, path).toBe(404);
  }
  expect((await fetch(serving.address.replace("/lamp/", "/"))).status).toBe(404);
});

/** Asks for a path exactly as written: fetch would tidy it up first. */
function askRaw(path: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(serving.port, "127.0.0.1", () => socket.write(`GET ${path} HTTP/1.0\r\n\r\n`));
    let text = "";
    socket.on("data", (part) => {
      text += part.toString();
    });
    socket.on("end", () => resolve(text));
    socket.on("error", reject);
  });
}

test.each([
  "/lamp/../secret.txt",
  "/lamp/%2e%2e/secret.txt",
  "/lamp/..%2fsecret.txt",
  "/lamp/..%5csecret.txt",
  "/lamp/%00",
])("no file outside the app is handed out: %s", async (path) => {
  const answer = await askRaw(path);
  expect(answer).toMatch(/^HTTP\/1\.1 404/);
  expect(answer).not.toContain("secret\n");
});

test("only reading is answered", async () => {
  expect((await fetch(serving.address, { method: "POST" })).status).toBe(405);
  const head = await fetch(serving.address, { method: "HEAD" });
  expect([head.status, await head.text()]).toEqual([200, ""]);
});

test("a taken port gives way to the next free one", async () => {
  const second = await serve({ dir: join(top, "dist"), port: serving.port });
  expect(second.port).toBeGreaterThan(serving.port);
  await second.close();
});

test("without a built app there is a plain word for it", async () => {
  await expect(serve({ dir: join(top, "nowhere"), port: 0 })).rejects.toThrow(/npm run build/);
});

test("an address that cannot be decoded names no file", () => {
  expect(fileFor("/%E0%A4%A", "/")).toBeUndefined();
  expect(fileFor("/", "/")).toBe("index.html");
});
