/**
 * Asks the worker of the sheet editor, so that no screen waits while a sheet is checked. One worker, one request at a
 * time; a newer one of the same kind takes the place of an older, whose answer is nothing. A worker that breaks is
 * replaced and asked again; where none will run, the page answers itself, and says so. Checks nothing.
 */
import type { ProvingGround } from "../state/sheet-tools.js";
import type { SheetAnswering } from "./sheet-answers.js";
import type { SheetAnswer, SheetAsked, SheetCame, SheetGoesOn, SheetRequest } from "./sheet-messages.js";

/** What is needed of a worker; a test hands in its own. */
export interface SheetWorker {
  postMessage(message: SheetRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<SheetAnswer | SheetGoesOn>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export interface SheetsBeside {
  /** Undefined when a newer request of its kind was made meanwhile. */
  ask(asked: SheetAsked, ground: ProvingGround): Promise<SheetCame | undefined>;
  /** Starts the worker; it is ended a while after the last who stayed has left. */
  stay(): () => void;
  /** Whether no worker will run and the page answers itself. */
  readonly isInTheWay: boolean;
}

interface Waiting {
  /** A newer one took its place while it ran. */
  dropped: boolean;
  readonly id: number;
  readonly asked: SheetAsked;
  readonly ground: ProvingGround;
  readonly done: (came: SheetCame | undefined) => void;
  readonly failed: (error: Error) => void;
}

/** Workers that broke one after the other, none having answered: so many, and the page does it. */
const TRIES = 2;
/**
 * A worker silent for this many rounds was ended by the phone: no single step it takes is as long. Counted in rounds, not
 * by the clock: while a phone sleeps no round goes by, and waking it brings one.
 */
const SILENT_ROUNDS = 12;
const ROUND_MS = 5_000;
/** From one screen of the editor to the next is far less. */
const REST_MS = 20_000;

export function sheetsBeside(makeWorker: () => SheetWorker, here: () => Promise<SheetAnswering>): SheetsBeside {
  let worker: SheetWorker | undefined;
  let sent: Partial<ProvingGround> = {};
  let running: Waiting | undefined;
  let waiting: readonly Waiting[] = [];
  let silence: ReturnType<typeof setInterval> | undefined;
  let silentRounds = 0;
  let broken = 0;
  let lastId = 0;
  let stays = 0;

  const listen = (): void => {
    clearInterval(silence);
    silentRounds = 0;
    silence = setInterval(() => {
      silentRounds += 1;
      if (silentRounds >= SILENT_ROUNDS) broke();
    }, ROUND_MS);
  };
  const end = (): void => {
    clearInterval(silence);
    worker?.terminate();
    worker = undefined;
    sent = {};
  };
  const broke = (): void => {
    end();
    broken += 1;
    if (running?.dropped) running = undefined;
    if (running) post(running);
    else next();
  };
  const start = (): SheetWorker => {
    const made = makeWorker();
    made.onmessage = ({ data }) => {
      broken = 0;
      if ("goesOn" in data) silentRounds = 0;
      else answered(data);
    };
    made.onerror = () => {
      if (made === worker) broke();
    };
    return made;
  };
  const answered = (answer: SheetAnswer): void => {
    if (answer.id !== running?.id) return;
    clearInterval(silence);
    const { done, failed } = running;
    running = undefined;
    if ("came" in answer) done(answer.came);
    else failed(new Error(answer.broke));
    next();
  };
  const post = (one: Waiting): void => {
    const { id, asked, ground } = one;
    if (broken >= TRIES) {
      const whole = { id, asked, ...ground };
      here()
        .then((answer) => answer(whole))
        .then(answered, (error: unknown) => answered({ id, broke: String(error) }));
      return;
    }
    const { sheet, on } = ground;
    try {
      worker ??= start();
      worker.postMessage({ id, asked, ...(sheet === sent.sheet ? {} : { sheet }), ...(on === sent.on ? {} : { on }) });
      sent = { sheet, on };
      listen();
    } catch {
      broke();
    }
  };
  const next = (): void => {
    if (running) return;
    [running, ...waiting] = waiting;
    if (running) post(running);
  };
  const rest = (): void => {
    if (stays > 0 || !worker) return;
    if (running) setTimeout(rest, REST_MS);
    else end();
  };

  return {
    ask: (asked, ground) =>
      new Promise((done, failed) => {
        for (const one of [...waiting, ...(running ? [running] : [])]) {
          if (one.asked.do !== asked.do) continue;
          one.dropped = true;
          one.done(undefined);
        }
        const one: Waiting = { dropped: false, id: ++lastId, asked, ground, done, failed };
        waiting = [...waiting.filter(({ dropped }) => !dropped), one];
        next();
      }),
    stay: () => {
      stays += 1;
      try {
        if (broken < TRIES) worker ??= start();
      } catch {
        broke();
      }
      return () => {
        stays -= 1;
        setTimeout(rest, REST_MS);
      };
    },
    get isInTheWay() {
      return broken >= TRIES;
    },
  };
}
