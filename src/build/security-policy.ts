/**
 * The content security policy of the built page, in one place. Refuses to know what the page does: whatever
 * is not named here is forbidden to it.
 */

/**
 * The policy as one text. `connect` lists further origins the page may exchange data with, separated by blanks
 * (deploy setting LEADLAMP_CONNECT); nothing by default, so no request leaves the origin.
 * Throws on anything but plain https origins: a slip here would open the policy silently.
 */
export function securityPolicy(connect = ""): string {
  const origins = connect.split(/\s+/).filter((origin) => origin !== "");
  const odd = origins.find((origin) => !/^https:\/\/[a-z0-9.-]+(:\d+)?$/i.test(origin));
  if (odd !== undefined) throw new Error(`LEADLAMP_CONNECT may only list https origins, not "${odd}"`);
  return [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' blob:",
    "media-src blob:",
    "font-src 'self'",
    `connect-src ${["'self'", ...origins].join(" ")}`,
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    "trusted-types leadlamp",
  ].join("; ");
}
