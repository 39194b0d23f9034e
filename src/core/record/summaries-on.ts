/** Summaries of all streams, made anew only where a stream moved on. Refuses to know what holds the transactions. */
import { ok, type Result } from "../terms/index.js";
import type { Engine } from "./engine.js";
import { byCode } from "./identity.js";
import { FOLD_VERSION } from "./ledger.js";
import type { Head } from "./shelf.js";
import { type Summary, summarise } from "./summary.js";

const SUMMARY = "summary";

/** One text for how far every writer has come, and for what happened below. */
export function markOf(heads: ReadonlyMap<string, Head>): string {
  const parts = [...heads].map(([writer, { last, moved }]) => `${writer} ${last} ${moved}`);
  return parts.sort(byCode).join("\n");
}

/** Streams whose entries are read and summed up in one go: short transactions, and work done is work kept. */
const AT_A_TIME = 5;

/** Summaries as kept where still true; the others made anew and kept for next time. */
export async function summaries(engine: Engine): Promise<Result<readonly Summary[]>> {
  const read = await engine.run("read", async (shelf) => {
    const [heads, kept] = await Promise.all([shelf.allHeads(), shelf.snapshots(SUMMARY)]);
    const byStream = new Map(kept.map((one) => [one.stream, one]));
    return [...heads].map(([stream, of]) => ({ stream, kept: byStream.get(stream), mark: markOf(of) }));
  });
  if (!read.ok) return read;
  const list: Summary[] = [];
  const stale: string[] = [];
  for (const { stream, kept, mark } of read.value) {
    // Only this function keeps snapshots under this name.
    if (kept?.mark === mark && kept.foldVersion === FOLD_VERSION) list.push(kept.data as Summary);
    else stale.push(stream);
  }
  for (let at = 0; at < stale.length; at += AT_A_TIME) {
    const made = await summedUp(engine, stale.slice(at, at + AT_A_TIME));
    if (!made.ok) return made;
    list.push(...made.value);
  }
  return ok(list.sort((a, b) => byCode(a.stream, b.stream)));
}

async function summedUp(engine: Engine, streams: readonly string[]): Promise<Result<readonly Summary[]>> {
  const read = await engine.run("read", (shelf) =>
    Promise.all(
      streams.map(async (stream) => {
        const [heads, entries] = await Promise.all([shelf.headsOf(stream), shelf.ofStream(stream)]);
        return { stream, mark: markOf(heads), entries };
      }),
    ),
  );
  if (!read.ok) return read;
  // A stream removed since has nothing left to sum up.
  const present = read.value.filter(({ entries }) => entries.length > 0);
  const made = await Promise.all(
    present.map(async ({ stream, mark, entries }) => ({ stream, mark, data: await summarise(stream, entries) })),
  );
  // Losing this costs time at the next launch, nothing else.
  await engine.run("spare", async (shelf) => {
    for (const one of made) shelf.putSnapshot({ ...one, name: SUMMARY, foldVersion: FOLD_VERSION });
  });
  return ok(made.map(({ data }) => data));
}
