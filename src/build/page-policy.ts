/**
 * Vite plugin: puts the security policy first into the head of the built page. Not while developing, where
 * Vite's own live reload needs inline scripts. Refuses to know the policy's content.
 */
import type { Plugin } from "vite";
import { securityPolicy } from "./security-policy.js";

/** Adds the policy as a `<meta>`; `connect` as in {@link securityPolicy}. */
export function pagePolicy(connect: string | undefined): Plugin {
  return {
    name: "leadlamp:page-policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: securityPolicy(connect) },
        injectTo: "head-prepend",
      },
    ],
  };
}
