/** How the app is built and how unit tests are run. Knows paths and tools; no product code. */
import preact from "@preact/preset-vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";
import { checklists } from "./src/build/checklists.js";
import { chunkContents } from "./src/build/chunk-contents.js";
import { pagePolicy } from "./src/build/page-policy.js";
import { plainImports } from "./src/build/plain-imports.js";

const here = (path: string): string => new URL(path, import.meta.url).pathname;

/** Vitest looks for tests from the top of the tree; Vite wants index.html at its root. */
const testing = process.env["VITEST"] !== undefined;

/**
 * What is always loaded together lies in one file and is squeezed as one: what the start needs, and what the way to the
 * first reply needs beyond that, with the few lines of the bundler's own that only this one needs. Everything else is
 * split by screen. tests/support/loaded.ts names the same screens.
 */
const LOADED_TOGETHER = [
  { name: "start", tags: ["$initial" as const], priority: 2 },
  { name: "round", test: /(src\/app\/screens\/on-the-way\.ts|rolldown\/runtime\.js)$/, priority: 1 },
];

/** What jspdf would fetch to print mark-up, which nothing here does. */
const NEVER_PRINTED = ["html2canvas", "dompurify", "canvg"];

export default defineConfig({
  resolve: { alias: NEVER_PRINTED.map((find) => ({ find, replacement: here("src/device/pdf/none.ts") })) },
  root: testing ? here(".") : here("src/app"),
  base: "./",
  publicDir: here("public"),
  build: {
    outDir: here("dist"),
    emptyOutDir: true,
    target: ["chrome111", "safari16.4", "firefox115"],
    manifest: true,
    // data: addresses are not allowed by our policy, so nothing is inlined.
    assetsInlineLimit: 0,
    // Everything is on the phone already: fetching ahead by hint would only make the first script longer.
    modulePreload: false,
    rolldownOptions: { output: { codeSplitting: { groups: LOADED_TOGETHER } }, checks: { bundlerTimings: false } },
  },
  worker: { format: "es" },
  plugins: [
    preact({ devToolsEnabled: false, prefreshEnabled: !testing }),
    checklists({ dir: here("checklists") }),
    pagePolicy(process.env["LEADLAMP_CONNECT"]),
    plainImports(),
    chunkContents(here(".")),
    VitePWA({
      strategies: "injectManifest",
      srcDir: "../sw",
      filename: "sw.ts",
      // Our own manifest is in public/, and main.tsx registers the worker through our own policy.
      manifest: false,
      injectRegister: false,
      integration: {
        configureCustomSWViteBuild: (own) => {
          own.logLevel = "warn";
        },
      },
      injectManifest: {
        rollupFormat: "iife",
        globPatterns: ["**/*"],
        globIgnores: ["sw.js", ".vite/**"],
        maximumFileSizeToCacheInBytes: 8_000_000,
      },
    }),
  ],
  test: {
    include: ["src/**/*.test.{ts,tsx}", "tests/**/*.test.ts"],
    exclude: ["node_modules/**", "tests/e2e/**"],
    setupFiles: [],
    environment: "node",
    // Test files share a process and its modules: loading them anew for each file took longer than the tests. A test
    // that leaves a signal, a clock or a global changed sets it back.
    isolate: false,
    // Left to itself it keeps one core free, which of two is half.
    maxWorkers: "100%",
    // Never a test of speed: a busy machine may take its time.
    testTimeout: 60_000,
  },
});
