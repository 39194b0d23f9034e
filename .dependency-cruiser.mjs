/**
 * Who may import whom. One row a zone; each row says what to do instead. The tests under tests/boundaries
 * prove that these rules see the whole tree and bite.
 */

const TEST = "\\.test\\.tsx?$";
/** A relative import of a file that is not there: told once, by no-unresolved. */
const UNRESOLVED = "^\\.{1,2}/";

/**
 * A zone may import itself, core/terms and what is listed; everything else is refused.
 * `types` lists what it may import as types only.
 */
const zone = (name, from, allowed, comment, types = []) => [
  {
    name: `${name}-imports`,
    comment,
    severity: "error",
    from: { path: from, pathNot: TEST },
    to: { pathNot: [from, "^src/core/terms/", UNRESOLVED, ...allowed, ...types] },
  },
  ...(types.length > 0
    ? [
        {
          name: `${name}-types-only`,
          comment: `${comment} What is listed as types only must be written "import type".`,
          severity: "error",
          from: { path: from, pathNot: TEST },
          to: { path: types, pathNot: [from, ...allowed], dependencyTypesNot: ["type-only"] },
        },
      ]
    : []),
];

const core = (folder) => `^src/core/${folder}/`;
const pkg = (name) => `^node_modules/${name}/`;
const preact = [pkg("preact"), pkg("@preact/signals"), pkg("@preact/signals-core")];

export default {
  forbidden: [
    ...zone("terms", core("terms"), [], "core/terms imports nothing: a word all may share may not lean on anybody."),
    ...zone(
      "units",
      core("units"),
      [],
      "core/units imports nothing but terms: bring the figure to the caller instead.",
    ),
    ...zone(
      "expr",
      core("expr"),
      [core("units"), "^src/core/trade/signatures", pkg("@marcbachmann/cel-js")],
      "core/expr knows units, the signatures of trade functions and the CEL library. The world it asks is a Scope handed in.",
    ),
    ...zone("trade", core("trade"), [core("units")], "core/trade computes from units alone: pass other facts in."),
    ...zone(
      "sheet",
      core("sheet"),
      [core("units"), core("expr"), pkg("zod")],
      "core/sheet knows units, expressions and zod/mini. Reading files and YAML is the work of build and cli.",
    ),
    ...zone(
      "assess",
      core("assess"),
      [core("sheet"), core("expr"), core("trade"), core("units")],
      "core/assess takes sheets and replies as data: the record, the plan and the screen hand them over.",
    ),
    ...zone(
      "trend",
      core("trend"),
      [core("trade")],
      "core/trend takes readings of several visits as data: who judged them hands them over.",
    ),
    ...zone(
      "plan",
      core("plan"),
      [core("units")],
      "core/plan takes faults as data: only the types of assess, record and sheet may be named.",
      [core("assess"), core("record"), core("sheet")],
    ),
    ...zone(
      "record",
      core("record"),
      [core("units")],
      "core/record keeps what was said and refuses to know what it means: only the types of sheet may be named.",
      [core("sheet")],
    ),
    ...zone(
      "report",
      core("report"),
      [core("units")],
      "core/report is given everything as data: only the types of the other core folders may be named.",
      [core("(assess|plan|record|sheet|trade|trend|expr)")],
    ),
    ...zone(
      "store",
      "^src/device/store/",
      ["^src/core/", pkg("idb")],
      "A device folder knows core's interfaces and its own library. Let main.tsx join two of them.",
    ),
    ...zone(
      "files",
      "^src/device/files/",
      ["^src/core/", pkg("(fflate|age-encryption)")],
      "A device folder knows core's interfaces and its own library. Let main.tsx join two of them.",
    ),
    ...zone(
      "sound",
      "^src/device/sound/",
      ["^src/core/", pkg("fft\\.js")],
      "A device folder knows core's interfaces and its own library. Let main.tsx join two of them.",
    ),
    ...zone(
      "device",
      "^src/device/(photo|work)/",
      ["^src/core/"],
      "A device folder knows core's interfaces and its own library. Let main.tsx join two of them.",
    ),
    ...zone(
      "pdf",
      "^src/device/pdf/",
      ["^src/core/", pkg("jspdf")],
      "A device folder knows core's interfaces and its own library. Let main.tsx join two of them.",
    ),
    ...zone(
      "texts",
      "^src/app/texts/",
      preact,
      "Texts are a catalogue of words: what decides between them is the screen's.",
    ),
    ...zone(
      "parts",
      "^src/app/parts/",
      ["^src/app/style/", "^src/app/texts/", core("report"), pkg("signature_pad"), ...preact],
      "app/parts draw what they are given: state belongs to screens. Core gives them types and pure drawings only.",
      ["^src/core/"],
    ),
    ...zone(
      "screens",
      "^src/app/screens/",
      ["^src/app/(state|parts|style|texts)/", "^src/core/", ...preact],
      "A screen knows state, parts and core. What the phone offers reaches it through state, joined in main.tsx.",
    ),
    ...zone(
      "state",
      "^src/app/state/",
      ["^src/core/", "^src/app/texts/", ...preact],
      "app/state knows core, words and signals. The store and the camera are handed in by main.tsx as core's interfaces.",
    ),
    {
      name: "app-imports",
      comment:
        "The app may not lean on the command line, the build or the service worker's inside: share through core.",
      severity: "error",
      from: { path: "^src/app/", pathNot: TEST },
      // The reader of YAML is one for the build and for importing a sheet; parsers-only-when-asked guards who in the app.
      to: { path: "^src/(cli|build|sw)/", pathNot: "^src/build/yaml-source\\.ts$" },
    },
    {
      name: "no-node-in-browser",
      comment: "This runs on a phone: there is no Node there.",
      severity: "error",
      from: { path: ["^src/(app|core|device|sw)/", "^src/build/yaml-(source|offset)\\.ts$"], pathNot: TEST },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "only-main-joins",
      comment: "Only src/app/main.tsx joins core to device. Take the interface as an argument instead.",
      severity: "error",
      from: { path: "^src/(app|core)/", pathNot: ["^src/app/main\\.tsx$", TEST] },
      to: { path: "^src/device/" },
    },
    {
      name: "sw-imports",
      comment: "The service worker keeps files, never the record: it may only know workbox.",
      severity: "error",
      from: { path: "^src/sw/" },
      to: { pathNot: ["^src/sw/", pkg("workbox-(precaching|routing|core|strategies)")] },
    },
    {
      name: "core-from-outside",
      comment: "core may import nothing outside core but zod/mini (sheet) and the CEL library (expr).",
      severity: "error",
      from: { path: "^src/core/", pathNot: TEST },
      to: { pathNot: ["^src/core/", pkg("zod"), pkg("@marcbachmann/cel-js"), UNRESOLVED] },
    },
    {
      name: "zod-mini-only",
      comment: "Import zod/mini: the whole of zod is four times as large.",
      severity: "error",
      from: { path: "^src/" },
      to: { path: pkg("zod"), pathNot: "^node_modules/zod/(v4/)?mini/" },
    },
    {
      name: "doors",
      comment:
        "Enter another core folder through its door (index, run, author, work) or take a type from its contract.",
      severity: "error",
      from: { path: "^src/core/([^/]+)/", pathNot: TEST },
      to: {
        path: "^src/core/[^/]+/",
        pathNot: ["^src/core/$1/", "^src/core/[^/]+/(index|run|author|work)\\.ts$"],
        dependencyTypesNot: ["type-only"],
      },
    },
    {
      name: "doors-from-outside",
      comment: "Enter core through its doors (index, run, author, work) or take a type from a contract.",
      severity: "error",
      from: { path: "^src/(app|device|cli|build)/", pathNot: TEST },
      to: {
        path: "^src/core/[^/]+/",
        pathNot: ["^src/core/[^/]+/(index|run|author|work)\\.ts$"],
        dependencyTypesNot: ["type-only"],
      },
    },
    {
      name: "parsers-only-when-asked",
      comment:
        "The screens may not load a parser or a checker (architecture §11.12). Only src/app/import may, itself loaded with import() when a sheet is imported or edited.",
      severity: "error",
      from: { path: "^src/app/", pathNot: ["^src/app/import/", TEST] },
      to: {
        path: [
          "^src/core/(expr|sheet)/author\\.ts$",
          pkg("@marcbachmann/cel-js"),
          pkg("zod"),
          pkg("yaml"),
          "^src/build/yaml-source\\.ts$",
        ],
        dependencyTypesNot: ["type-only"],
      },
    },
    {
      name: "cli-imports",
      comment:
        "The command line is core on a terminal: it may know core, the build's sheet reader, what opens a copy, and Node.",
      severity: "error",
      from: { path: "^src/cli/", pathNot: [TEST, "^src/cli/test\\.mjs$"] },
      to: {
        pathNot: ["^src/(cli|core|build)/", "^src/device/files/open\\.ts$", pkg("(yaml|tsx)"), UNRESOLVED],
        dependencyTypesNot: ["core"],
      },
    },
    {
      name: "build-imports",
      comment:
        "The build knows core/sheet, core/expr, the names of core/trade, yaml, vite and Node: no app, no device.",
      severity: "error",
      from: { path: "^src/build/", pathNot: TEST },
      to: {
        pathNot: [
          "^src/build/",
          core("(sheet|expr|terms|trade|units|assess|plan)"),
          pkg("(yaml|vite|zod)"),
          UNRESOLVED,
        ],
        dependencyTypesNot: ["core"],
      },
    },
    {
      name: "no-cycles",
      comment: "Two files that need each other are one file, or hide a third that both need.",
      severity: "error",
      from: { path: "^src/" },
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    {
      name: "no-unresolved",
      comment: "The imported file does not exist.",
      severity: "error",
      from: { path: "^(src|tests)/" },
      to: { couldNotResolve: true, pathNot: ["^virtual:", "\\?worker&url$"] },
    },
    {
      name: "no-tests-in-product",
      comment: "Product code may not lean on tests or their packages.",
      severity: "error",
      from: { path: "^src/", pathNot: [TEST, "^src/cli/test\\.mjs$"] },
      to: { path: ["^tests/", pkg("(vitest|fast-check|fake-indexeddb|@playwright)")] },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: "specify",
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "browser", "default", "types"],
    },
    builtInModules: { add: ["node:test"] },
  },
};
