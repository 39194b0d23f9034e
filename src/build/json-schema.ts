/** Writes the published JSON Schema of sheets and shared files from the one schema in core. Knows no sheet. */
import { mkdir, writeFile } from "node:fs/promises";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import * as z from "zod/mini";
import { Common, Sheet } from "../core/sheet/author.js";

/** Where each is published, from the top of the tree, and what it describes. */
const PUBLISHED = [
  { file: "public/schema/leadlamp-sheet-1.json", schema: Sheet, title: "Leadlamp check sheet, format 1" },
  { file: "public/schema/leadlamp-common-1.json", schema: Common, title: "Leadlamp shared files, format 1" },
] as const;

/** Every published file with the text it must have. */
export function publishedSchemas(): readonly { readonly file: string; readonly text: string }[] {
  return PUBLISHED.map(({ file, schema, title }) => {
    const { $schema, ...rest } = z.toJSONSchema(schema, { target: "draft-2020-12" });
    return { file, text: `${JSON.stringify({ $schema, title, ...rest }, null, 2)}\n` };
  });
}

/** Run as a script: writes them all. */
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const top = fileURLToPath(new URL("../../", import.meta.url));
  for (const { file, text } of publishedSchemas()) {
    await mkdir(dirname(`${top}${file}`), { recursive: true });
    await writeFile(`${top}${file}`, text);
    process.stdout.write(`${file}\n`);
  }
}
