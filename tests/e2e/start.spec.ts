/** `npm start` as a person meets it: the address it prints answers, a taken port gives way, Ctrl-C ends it. */
import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "../support/harness.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Starts it on what is built already, and waits for the address it prints. */
function start(port: number): Promise<{ child: ChildProcess; address: string; ended: Promise<number | null> }> {
  const env = { ...process.env, PORT: String(port), BROWSER: "none" };
  const child = spawn(process.execPath, ["src/cli/start.mjs", "--built"], { cwd: root, env });
  const ended = new Promise<number | null>((resolve) => child.once("exit", resolve));
  let told = "";
  return new Promise((resolve, reject) => {
    child.stdout.on("data", (part: Buffer) => {
      told += part.toString();
      const address = /Leadlamp is at\s+(http:\S+)/.exec(told)?.[1];
      if (address) resolve({ child, address, ended });
    });
    void ended.then((code) => reject(new Error(`it ended with ${code}: ${told}`)));
  });
}

test("it prints an address that answers, gives way on a taken port, and ends at Ctrl-C", async ({ site, page }) => {
  const first = await start(site.port);
  try {
    expect(Number(new URL(first.address).port)).toBeGreaterThan(site.port);
    await page.request.get(first.address).then((answer) => expect(answer.status()).toBe(200));
  } finally {
    first.child.kill("SIGINT");
  }
  expect(await first.ended).toBe(0);
});
