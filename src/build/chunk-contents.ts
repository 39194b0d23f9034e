/**
 * Vite plugin: writes down which module lies in which built file and who loads whom, so that byte budgets and
 * the parser ban are judged on what is really shipped. Refuses to know any budget.
 */
import { relative } from "node:path";
import type { Plugin } from "vite";

/** One built script. Modules are paths from the top of the tree; files are paths inside the built folder. */
export interface ChunkContents {
  readonly modules: readonly string[];
  /** Files loaded together with this one. */
  readonly imports: readonly string[];
  /** Files it may load later. */
  readonly later: readonly string[];
  readonly css: readonly string[];
  /** Style sheets it puts in later, by their address. */
  readonly laterCss: readonly string[];
}

/** Where the list lies in the built folder; a hidden folder is neither served nor kept by the service worker. */
export const CONTENTS_FILE = ".vite/contents.json";

/** Path from the top, or from `node_modules` wherever that lies; modules without a file keep their own name. */
function nameOf(id: string, top: string): string {
  if (id.startsWith("\0")) return id.slice(1);
  const path = relative(top, id.replace(/\?.*$/, "")).replaceAll("\\", "/");
  const packages = path.lastIndexOf("node_modules/");
  return packages < 0 ? path : path.slice(packages);
}

/** Writes {@link CONTENTS_FILE}; `top` is the top of the tree. */
export function chunkContents(top: string): Plugin {
  return {
    name: "leadlamp:chunk-contents",
    apply: "build",
    // After Vite's own step that ties styles to chunks.
    enforce: "post",
    generateBundle(_, bundle) {
      const contents: Record<string, ChunkContents> = {};
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== "chunk") continue;
        contents[chunk.fileName] = {
          modules: Object.keys(chunk.modules).map((id) => nameOf(id, top)),
          imports: chunk.imports,
          later: chunk.dynamicImports,
          css: [...(chunk.viteMetadata?.importedCss ?? [])],
          laterCss: [...(chunk.viteMetadata?.importedAssets ?? [])].filter((file) => file.endsWith(".css")),
        };
      }
      this.emitFile({ type: "asset", fileName: CONTENTS_FILE, source: JSON.stringify(contents, null, 1) });
    },
  };
}
