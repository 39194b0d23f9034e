/** Door of device/files: picking files, handing them to the share sheet or the downloads, packing and opening copies. */
import type { FileDoor } from "../../core/record/files.js";
import { readyFile } from "./hand.js";
import { copyText, shareText } from "./hand-text.js";
import { pickFiles } from "./pick.js";

export { packerWith } from "./packer.js";

/** The browser's own way to pick and hand on files. */
export const browserFiles: FileDoor<File> = {
  pick: (wish) => pickFiles(wish, document),
  ready: (content) => readyFile(content, { navigator, document, urls: URL, later: (act, ms) => setTimeout(act, ms) }),
  share: (text) => shareText(text, navigator),
  copy: (text) => copyText(text, navigator),
};
