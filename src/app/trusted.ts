/**
 * The one Trusted Types policy: script addresses of our own origin, nothing else. Where the browser has no
 * Trusted Types the same check is made and the plain address handed on. Refuses to know what is run.
 */

interface PolicyFactory {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): { createScriptURL(url: string): unknown };
}

/** An absolute address of this origin; throws on any other, which can only be our own mistake. */
function ownAddress(url: string): string {
  const absolute = new URL(url, document.baseURI);
  if (absolute.origin !== location.origin) throw new Error(`Refused to run a script from ${absolute.origin}`);
  return absolute.href;
}

const factory = (globalThis as { readonly trustedTypes?: PolicyFactory }).trustedTypes;
const policy = factory?.createPolicy("leadlamp", { createScriptURL: ownAddress });

/**
 * A script address the browser will accept for a worker or the service worker.
 * The DOM types know only text here, although the browser is given its trusted form.
 */
export function trustedScript(url: string): string {
  return policy ? (policy.createScriptURL(url) as string) : ownAddress(url);
}

/** A module worker from the address of a `?worker&url` import. */
export const startWorker = (url: string): Worker => new Worker(trustedScript(url), { type: "module" });
