/** From the owner's words to complaints the shared files know. Knows no points and no car. */
import type { CommonTexts } from "../sheet/run.js";

/** Ids of the complaints whose words occur in what was said, best match first. */
export function complaintsIn(said: string, texts: CommonTexts): readonly string[] {
  throw new Error(`complaintsIn is being built: ${said} ${texts.language}`);
}
