/** An assessment that can be carried on reply by reply. Knows no journal and no screen. */
import { assemble } from "./assemble.js";
import { changedNodes, forget } from "./changes.js";
import type { AssessInput, Assessment } from "./contract.js";
import type { Engine } from "./engine.js";
import { type Given, layOut } from "./given.js";
import type { Records } from "./ledger.js";
import { type Founds, runPasses } from "./passes.js";
import { buildSite, type Site } from "./site.js";
import { World } from "./world.js";

/** An assessment with what it rests on, to be carried on from. Never altered: `reassess` gives a new one. */
export interface Session {
  readonly engine: Engine;
  readonly input: AssessInput;
  readonly assessment: Assessment;
  /** For carrying on. */
  readonly kept: Kept;
}
export interface Kept {
  readonly site: Site;
  readonly given: Given;
  readonly records: Records;
  readonly rawRecords: Records;
  readonly founds: Founds;
}

/** Sites made for an engine, by sheets and places; the last few, since two cars may be open at once. */
const SITES_KEPT = 4;
const sites = new WeakMap<Engine, Map<string, Site>>();

function siteFor(engine: Engine, input: AssessInput): Site {
  const changes = input.car.places ?? [];
  const open = [...new Set(input.sheets)].sort();
  const key = JSON.stringify([open, changes]);
  const made = sites.get(engine) ?? new Map<string, Site>();
  sites.set(engine, made);
  const before = made.get(key);
  if (before !== undefined) return before;
  const oldest = made.keys().next();
  if (made.size >= SITES_KEPT && oldest.done !== true) made.delete(oldest.value);
  const site = buildSite(engine.model, open, changes);
  made.set(key, site);
  return site;
}

/** Assesses a visit from nothing. */
export function assess(engine: Engine, input: AssessInput): Assessment {
  return start(engine, input).assessment;
}

/** Assesses a visit from nothing and keeps what each conclusion rests on. */
export function start(engine: Engine, input: AssessInput): Session {
  const site = siteFor(engine, input);
  return work(engine, input, new World(site, layOut(site, input), emptyRecords(site), []), undefined);
}

/**
 * The same visit with changed input: works out again only what rests on the change. Equals `start(engine, input)`.
 * Other sheets or places are another site: then all of it.
 */
export function reassess(session: Session, input: AssessInput): Session {
  const { engine, kept } = session;
  const site = siteFor(engine, input);
  if (site !== kept.site) return start(engine, input);
  const given = layOut(site, input, kept.given);
  const records = [...kept.records];
  const rawRecords = [...kept.rawRecords];
  forget(changedNodes(site, kept.given, given), records, rawRecords);
  return work(engine, input, new World(site, given, records, rawRecords), kept.founds);
}

/** Room for every node there is: records then lie side by side. */
const emptyRecords = (site: Site): Records => new Array<undefined>(site.nodes.length).fill(undefined);

function work(engine: Engine, input: AssessInput, world: World, before: Founds | undefined): Session {
  const founds = runPasses(world, before);
  const assessment = assemble(engine, input, world);
  const { site, given, records, rawRecords } = world;
  return { engine, input, assessment, kept: { site, given, records, rawRecords, founds } };
}

/** What the visit's replies say, to be asked once more: for telling how a value came about. Concludes nothing. */
export const worldOf = ({ kept }: Session): World => new World(kept.site, kept.given, kept.records, kept.rawRecords);
