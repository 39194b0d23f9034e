/** What handing over asks of the page itself: printing it, the clipboard, its own typeface. Knows no hand-over. */

/** Whether it lies on the clipboard now. Call inside a tap. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Longest a picture is waited for before printing. Own choice. */
const LONGEST_MS = 20_000;
const LOOK_AGAIN_MS = 100;

/** Prints once every picture of the page is drawn, or gone. */
export async function printDrawn(isDrawn: () => boolean): Promise<void> {
  const until = performance.now() + LONGEST_MS;
  while (!isDrawn() && performance.now() < until) await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
  print();
}

const FACE = "fonts/atkinson-hyperlegible-next-latin.woff2";

/** The app's typeface as it came; undefined where it does not come. */
export async function ownFace(): Promise<Uint8Array | undefined> {
  try {
    const answer = await fetch(new URL(FACE, document.baseURI));
    return answer.ok ? new Uint8Array(await answer.arrayBuffer()) : undefined;
  } catch {
    return undefined;
  }
}
