/** The printing worker: takes one wish, asks for its pictures one after the other, answers with the sheet. */
import bold from "./face/leadlamp-sheet-bold.ttf?url";
import regular from "./face/leadlamp-sheet-regular.ttf?url";
import { makeSheet } from "./make-sheet.js";
import type { FromPress, ToPress } from "./messages.js";
import type { Faces } from "./pen.js";
import { toPaper } from "./to-paper.js";

const tell = (message: FromPress, transfer: ArrayBuffer[] = []): void => self.postMessage(message, { transfer });

async function fetched(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`The printing face was not there (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

const faces = async (): Promise<Faces> => {
  const [plain, heavy] = await Promise.all([fetched(regular), fetched(bold)]);
  return { regular: plain, bold: heavy };
};

/** Pictures are asked for one at a time, so one answer waits at most. */
let answered: ((picture: Extract<ToPress, { readonly is: "picture" }>["picture"]) => void) | undefined;

async function print(wish: Extract<ToPress, { readonly is: "wish" }>["wish"]): Promise<void> {
  const sheet = await makeSheet(
    wish,
    await faces(),
    async (hash, most) => {
      const picture = await new Promise<Parameters<NonNullable<typeof answered>>[0]>((resolve) => {
        answered = resolve;
        tell({ is: "wanted", hash });
      });
      return picture && toPaper(picture, most);
    },
    (done, of) => tell({ is: "drawn", done, of }),
  );
  tell({ is: "printed", sheet }, [sheet.bytes.buffer]);
}

self.addEventListener("message", ({ data }: MessageEvent<ToPress>) => {
  if (data.is === "picture") answered?.(data.picture);
  else print(data.wish).catch((error: unknown) => tell({ is: "broke", says: String(error) }));
});
