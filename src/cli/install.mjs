/**
 * Brings the installed packages up to the lock file, before any of them can be used: plain Node only.
 * Refuses to know what the packages are for.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";

/** @typedef {{ version?: string, optional?: boolean, devOptional?: boolean, peer?: boolean }} Locked */

/**
 * @param {string} file
 * @returns {Record<string, Locked> | undefined} packages by folder; undefined when the file is missing or unreadable
 */
function lockedPackages(file) {
  if (!existsSync(file)) return undefined;
  try {
    return JSON.parse(readFileSync(file, "utf8")).packages;
  } catch {
    return undefined;
  }
}

/**
 * Whether what is installed differs from the lock file. Packages npm may leave out on this machine
 * (optional ones, for other systems) are no difference.
 * @param {string} root folder of the project
 */
export function installIsStale(root) {
  const wanted = lockedPackages(join(root, "package-lock.json"));
  const present = lockedPackages(join(root, "node_modules", ".package-lock.json"));
  if (!wanted || !present) return true;
  return Object.entries(wanted).some(([folder, locked]) => {
    if (folder === "" || locked.optional) return false;
    const installed = present[folder];
    if (!installed) return !locked.devOptional;
    return installed.version !== locked.version || !existsSync(join(root, folder, "package.json"));
  });
}

/**
 * @param {string} version as in process.versions.node
 * @returns {boolean} new enough for the build tools
 */
export function nodeIsNewEnough(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  return major > 20 || (major === 20 && minor >= 19);
}

/**
 * Runs npm with the npm that started us, else the one on the path.
 * @param {string} root
 * @param {readonly string[]} words
 */
function npm(root, words) {
  const own = process.env["npm_execpath"];
  const direct = own !== undefined && /npm-cli\.[cm]?js$/.test(own);
  const command = direct ? process.execPath : process.platform === "win32" ? "npm.cmd" : "npm";
  const options = {
    cwd: root,
    stdio: /** @type {const} */ ("inherit"),
    shell: !direct && process.platform === "win32",
  };
  return spawnSync(command, direct ? [own, ...words] : [...words], options).status ?? 1;
}

/**
 * Installs when needed; says what it does. Ends the program with a plain sentence when it cannot.
 * @param {string} root
 */
export function makeReady(root) {
  if (!nodeIsNewEnough(process.versions.node)) {
    console.error(`Leadlamp needs Node 20.19 or newer; this is ${process.versions.node}. Install it from nodejs.org.`);
    process.exit(1);
  }
  if (!installIsStale(root)) return;
  console.log("Installing the packages named in package-lock.json (once; a minute or so) …");
  if (npm(root, ["ci", "--no-audit", "--no-fund"]) !== 0) {
    console.error("The packages could not be installed: see npm's own words above. A network is needed this one time.");
    process.exit(1);
  }
}
