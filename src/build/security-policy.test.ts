import { expect, test } from "vitest";
import { securityPolicy } from "./security-policy.js";

const directive = (policy: string, name: string): string | undefined =>
  policy.split("; ").find((part) => part.startsWith(`${name} `));

test("by default nothing may be asked but our own origin, nothing run but our own scripts", () => {
  const policy = securityPolicy();
  expect(directive(policy, "default-src")).toBe("default-src 'none'");
  expect(directive(policy, "connect-src")).toBe("connect-src 'self'");
  expect(directive(policy, "script-src")).toBe("script-src 'self'");
  expect(directive(policy, "require-trusted-types-for")).toBe("require-trusted-types-for 'script'");
  expect(policy).not.toMatch(/unsafe|data:|\*|http/);
});

test("a deploy setting adds origins to be asked and changes nothing else", () => {
  const policy = securityPolicy("https://store.example https://other.example:8443");
  expect(directive(policy, "connect-src")).toBe("connect-src 'self' https://store.example https://other.example:8443");
  expect(policy.replace(" https://store.example https://other.example:8443", "")).toBe(securityPolicy());
});

test.each([
  "*",
  "http://store.example",
  "https:",
  "https://store.example; script-src *",
  "'unsafe-inline'",
  "https://*.example",
])("a setting that would open the policy is refused: %s", (connect) => {
  expect(() => securityPolicy(connect)).toThrow(/LEADLAMP_CONNECT/);
});
