/**
 * Writes down what the app may never do while a test runs: break its policy, throw, log an error, or ask another
 * origin. Refuses to know what the test is about.
 */
import type { BrowserContext, Page } from "@playwright/test";

export interface Offences {
  /** What was seen so far, one line each. */
  readonly seen: readonly string[];
}

declare global {
  /** Put into every page by {@link watchOffences}. */
  var leadlampOffence: ((text: string) => Promise<void>) | undefined;
}

/** A browser says so itself when there is no network; the app's own answer to that is what the tests look at. */
const NETWORK_GONE = /net::ERR_(INTERNET_DISCONNECTED|CONNECTION_REFUSED|FAILED)|Failed to fetch/;

/** Watches all pages of `context`; `origin` is the only one that may be asked. */
export async function watchOffences(context: BrowserContext, origin: string): Promise<Offences> {
  const seen: string[] = [];
  await context.exposeBinding("leadlampOffence", (_, text: string) => {
    seen.push(text);
  });
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) => {
      void globalThis.leadlampOffence?.(
        `policy: ${event.violatedDirective} ${event.blockedURI} at ${event.sourceFile}:${event.lineNumber}`,
      );
    });
  });
  const watchPage = (page: Page): void => {
    page.on("pageerror", (error) => seen.push(`thrown: ${error.stack || `${error.name}: ${error.message}`}`));
    page.on("console", (message) => {
      if (message.type() === "error" && !NETWORK_GONE.test(message.text())) seen.push(`console: ${message.text()}`);
    });
  };
  for (const page of context.pages()) watchPage(page);
  context.on("page", watchPage);
  context.on("request", (request) => {
    const asked = new URL(request.url());
    if (asked.protocol.startsWith("http") && asked.origin !== origin)
      seen.push(`asked another origin: ${request.url()}`);
  });
  return { seen };
}
