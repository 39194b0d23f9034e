/**
 * Vite plugin: parts loaded later are fetched plainly. Vite's own wrapper would preload styles and scripts beside them;
 * our two style sheets are put in by hand, in one order, and everything is on the phone already. Refuses to work once a
 * lazy part brings its own styles.
 */
import type { Plugin } from "vite";

/** What Vite hands its wrapper beside the call that fetches: once for each lazy part, and most lie in the first script. */
const BESIDE_THE_CALL = /,\s*__VITE_PRELOAD__(?:,\s*import\.meta\.url)?(?=\s*\))/g;

/** Replaces Vite's preloading wrapper by a plain call, and checks that nothing relied on it. */
export function plainImports(): Plugin {
  return {
    name: "leadlamp:plain-imports",
    apply: "build",
    enforce: "pre",
    load: {
      filter: { id: /vite\/preload-helper\.js$/ },
      handler: () => "export const __vitePreload = (load) => load();\n",
    },
    renderChunk: (code) => ({ code: code.replace(BESIDE_THE_CALL, ""), map: null }),
    generateBundle(_, bundle) {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== "chunk" || chunk.isEntry) continue;
        const styles = chunk.viteMetadata?.importedCss.size ?? 0;
        if (styles > 0)
          this.error(
            `${chunk.fileName} brings styles of its own: import them in src/app/style/index.css or later.css.`,
          );
      }
    },
  };
}
