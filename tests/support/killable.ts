/**
 * A browser with a profile of its own whose process can be killed outright, as a phone does when memory runs short.
 * Refuses to end it politely unless asked to.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { type BrowserContext, chromium, type Page } from "@playwright/test";
import { BROWSER_FLAGS, findBrowser, NO_BROWSER } from "./browser.js";

export interface Killable {
  readonly context: BrowserContext;
  readonly page: Page;
  /** SIGKILL to the browser and all its processes; resolves when they are gone. */
  kill(): Promise<void>;
  /** A polite end. */
  close(): Promise<void>;
}

const OPENS_WITHIN_MS = 20_000;

function gone(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve();
    else child.once("exit", () => resolve());
  });
}

/** The address the browser listens on, once it has written it down in its profile. */
async function listensAt(profile: string, child: ChildProcess): Promise<string> {
  const file = join(profile, "DevToolsActivePort");
  for (const began = Date.now(); Date.now() - began < OPENS_WITHIN_MS; await pause(20)) {
    if (child.exitCode !== null) throw new Error(`the browser ended with ${child.exitCode} before it was ready`);
    const [port, path] = existsSync(file) ? readFileSync(file, "utf8").split("\n") : [];
    if (port && path) return `ws://127.0.0.1:${port}${path}`;
  }
  throw new Error("the browser did not open in time");
}

/** Opens a browser on `profile` (a folder; kept between openings), with further `wishes` to it. */
export async function openKillable(profile: string, wishes: readonly string[] = []): Promise<Killable> {
  const browser = findBrowser();
  if (browser === undefined) throw new Error(NO_BROWSER);
  rmSync(join(profile, "DevToolsActivePort"), { force: true });
  const flags = ["--headless=new", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "--window-size=390,844"];
  // A group of its own, so that a kill takes the helper processes too.
  const child = spawn(browser, [...BROWSER_FLAGS, ...wishes, ...flags, "about:blank"], {
    detached: true,
    stdio: "ignore",
  });
  const connected = await chromium.connectOverCDP(await listensAt(profile, child));
  const context = connected.contexts()[0];
  const page = context?.pages()[0];
  if (!context || !page) throw new Error("the browser opened without a page");
  return {
    context,
    page,
    kill: async () => {
      const { pid } = child;
      if (pid !== undefined) process.kill(-pid, "SIGKILL");
      await gone(child);
      await connected.close().catch(() => undefined);
    },
    close: async () => {
      const session = await connected.newBrowserCDPSession();
      // The browser drops the connection while it answers.
      await session.send("Browser.close").catch(() => undefined);
      await gone(child);
    },
  };
}
