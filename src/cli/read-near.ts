/** Reads the file a verb was given. Knows no verb. */
import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import process from "node:process";

/** Relative to where it was called from: npm moves to the top of the tree first. */
export async function readNear(file: string): Promise<string | undefined> {
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
export function parsed(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}
