/**
 * The style sheet of the screens that come after the first reply: put behind the first one once, and waited for before
 * the first of those screens is drawn. One sheet for all of them, so that rules keep their order whatever is opened when.
 */
import address from "../style/later.css?url";

let arriving: Promise<void> | undefined;

/** Resolves when the later styles are in force. Where they did not come it rejects, and the next call tries again. */
export const laterStyles = (): Promise<void> => (arriving ??= put().catch(tryAnew));

function put(): Promise<void> {
  return new Promise((resolve, reject) => {
    const link = document.createElement("link");
    link.rel = "stylesheet";
    link.href = address;
    link.onload = () => resolve();
    link.onerror = () => {
      link.remove();
      reject(new Error(`The styles at ${address} did not come`));
    };
    document.head.append(link);
  });
}

function tryAnew(error: unknown): never {
  arriving = undefined;
  throw error;
}
