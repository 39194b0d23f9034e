/**
 * `npm start`: installs what is missing, builds, serves on this machine and opens the app with its demo.
 * Plain Node until everything is installed. Refuses to fail for want of a screen or a browser.
 */
import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { makeReady } from "./install.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));

/**
 * The system's own way to open an address, where there is a screen to open it on.
 * @returns {readonly [string, ...string[]] | undefined}
 */
function opener() {
  if (process.env["CI"] || process.env["SSH_CONNECTION"] || process.env["BROWSER"] === "none") return undefined;
  if (process.platform === "darwin") return ["open"];
  if (process.platform === "win32") return ["cmd", "/c", "start", ""];
  return process.env["DISPLAY"] || process.env["WAYLAND_DISPLAY"] ? ["xdg-open"] : undefined;
}

/** @param {string} address */
function open(address) {
  const [command, ...words] = opener() ?? [];
  if (command === undefined) return;
  const child = spawn(command, [...words, address], { stdio: "ignore", detached: true });
  child.on("error", () => console.log("No browser could be opened from here: open the address yourself."));
  child.unref();
}

makeReady(root);
if (!process.argv.includes("--built")) {
  const vite = join(root, "node_modules", "vite", "bin", "vite.js");
  const built = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], { cwd: root, stdio: "inherit" });
  if (built.status !== 0) {
    console.error("The app could not be built: see above.");
    process.exit(1);
  }
}
const { register } = await import("tsx/esm/api");
register();
const { serve, DEFAULT_PORT } = await import("./serve.js");
const wanted = Number(process.env["PORT"] ?? DEFAULT_PORT);
const serving = await serve({ port: Number.isInteger(wanted) && wanted >= 0 ? wanted : DEFAULT_PORT });
console.log(`\nLeadlamp is at   ${serving.address}`);
console.log(`with its demo    ${serving.address}#/demo`);
console.log("\nIt answers on this machine only. Ctrl-C ends it.");
open(`${serving.address}#/demo`);
for (const signal of /** @type {const} */ (["SIGINT", "SIGTERM"])) {
  process.once(signal, () => void serving.close().then(() => process.exit(0)));
}
