/** An assessment that can be carried on reply by reply. Knows no journal and no screen. */
import type { AssessInput, Assessment } from "./contract.js";
import type { Engine } from "./engine.js";

/** An assessment with what it rests on, to be carried on from. Never altered: `reassess` gives a new one. */
export interface Session {
  readonly engine: Engine;
  readonly input: AssessInput;
  readonly assessment: Assessment;
}

/** Assesses a visit from nothing. */
export function assess(engine: Engine, input: AssessInput): Assessment {
  return start(engine, input).assessment;
}

/** Assesses a visit from nothing and keeps what each conclusion rests on. */
export function start(engine: Engine, input: AssessInput): Session {
  throw new Error(`start is being built: ${engine.sheets.length} ${input.at}`);
}

/** The same visit with changed input: works out again only what rests on the change. Equals `start(engine, input)`. */
export function reassess(session: Session, input: AssessInput): Session {
  throw new Error(`reassess is being built: ${session.input.at} ${input.at}`);
}
