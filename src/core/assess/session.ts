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

/** What an assessment rests on: rules can be asked of it, and it can be carried on from. */
export interface Judged {
  readonly engine: Engine;
  readonly input: AssessInput;
  /** For carrying on. */
  readonly kept: Kept;
}
/** An assessment with what it rests on. Never altered: `reassess` gives a new one. */
export interface Session extends Judged {
  readonly assessment: Assessment;
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
  return assembled(engine, input, judge(fresh(engine, input), undefined));
}

/** Nothing worked out yet. */
function fresh(engine: Engine, input: AssessInput): World {
  const site = siteFor(engine, input);
  return new World(site, layOut(site, input), emptyRecords(site), []);
}

/**
 * The same visit with changed input: works out again only what rests on the change. Equals `start(engine, input)`.
 * Other sheets or places are another site: then all of it.
 */
export function reassess(session: Judged, input: AssessInput): Session {
  return assembled(session.engine, input, carriedOn(session, input));
}

/** As `reassess`, for who asks single rules and reads no assessment: putting one together is half of the work. */
export function judgeOn(session: Judged, input: AssessInput): Judged {
  const { kept } = carriedOn(session, input);
  return { engine: session.engine, input, kept };
}

function carriedOn({ engine, kept }: Judged, input: AssessInput): Work {
  const site = siteFor(engine, input);
  if (site !== kept.site) return judge(fresh(engine, input), undefined);
  const given = layOut(site, input, kept.given);
  const records = [...kept.records];
  const rawRecords = [...kept.rawRecords];
  forget(changedNodes(site, kept.given, given), records, rawRecords);
  return judge(new World(site, given, records, rawRecords), kept.founds);
}

/** Room for every node there is: records then lie side by side. */
const emptyRecords = (site: Site): Records => new Array<undefined>(site.nodes.length).fill(undefined);

interface Work {
  readonly world: World;
  readonly kept: Kept;
}

function judge(world: World, before: Founds | undefined): Work {
  const founds = runPasses(world, before);
  const { site, given, records, rawRecords } = world;
  return { world, kept: { site, given, records, rawRecords, founds } };
}

const assembled = (engine: Engine, input: AssessInput, { world, kept }: Work): Session => ({
  engine,
  input,
  assessment: assemble(engine, input, world),
  kept,
});

/** What the visit's replies say, to be asked once more: for telling how a value came about. Concludes nothing. */
export const worldOf = ({ kept }: Judged): World => new World(kept.site, kept.given, kept.records, kept.rawRecords);
