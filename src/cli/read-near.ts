/** Reads the file a verb was given. Knows no verb. */
import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import process from "node:process";

/** Relative to where it was called from: npm moves to the top of the tree first. */
async function readNear(file: string): Promise<string | undefined> {
  for (const from of [process.cwd(), process.env["INIT_CWD"]]) {
    if (from === undefined) continue;
    try {
      return await readFile(resolve(from, file), "utf8");
    } catch {
      // looked for in the next folder; told when it is in none
    }
  }
  return undefined;
}

/** The JSON a text holds; undefined where it is none. */
function parsed(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

/**
 * The JSON a file holds. A file that cannot be read is wrong use (2), one that is no JSON faulty input (1); either is
 * told on the error side.
 */
export async function jsonNear(
  file: string,
  err: (text: string) => void,
): Promise<{ readonly value: unknown } | 1 | 2> {
  const text = await readNear(file);
  if (text === undefined) {
    err(`${file}: this file cannot be read`);
    return 2;
  }
  const data = parsed(text);
  if (data === undefined) err(`${file}: this is no JSON`);
  return data ?? 1;
}
