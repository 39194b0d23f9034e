/**
 * One connection to the database: opened, watched, dropped and opened anew. Tells how storage is doing.
 * Refuses to know what is kept.
 */
import { type IDBPDatabase, openDB } from "idb";
import { type Health, NO_ANSWER, NoStorage, storageTrouble, Watched } from "../../core/record/index.js";
import { LAYOUT_VERSION, type Layout, upgrade } from "./layout.js";

export interface ConnectionOptions {
  /** How long opening or a transaction may take before it counts as dead, ms. */
  readonly patience: number;
  readonly nonce: () => string;
  /** Layout to ask for; tests play an older or newer program with it. */
  readonly version?: number;
}

type Database = IDBPDatabase<Layout>;

export class Connection {
  readonly health = new Watched<Health>({ is: "opening" });
  #database: Promise<Database> | undefined;
  /** Which database this is: another one under the same name means ours was cleared. */
  #made: string | undefined;
  #isClosed = false;
  readonly #name: string;
  readonly #options: ConnectionOptions;

  constructor(name: string, options: ConnectionOptions) {
    this.#name = name;
    this.#options = options;
  }

  /** An open handle; throws `NoStorage` with what to show when there is none. */
  async handle(): Promise<Database> {
    const { is } = this.health.value;
    if (this.#isClosed) throw new NoStorage({ is: "lost", why: "closed" });
    if (is === "closed-by-newer" || is === "blocked") throw new NoStorage(this.health.value);
    this.#database ??= this.#open();
    return this.#database;
  }

  /** Lets go of a dead handle; the next operation opens anew. */
  drop(): void {
    const dead = this.#database;
    this.#database = undefined;
    dead?.then((database) => database.close()).catch(() => undefined);
  }

  /** Lets go for good. */
  close(): void {
    this.#isClosed = true;
    this.drop();
  }

  #open(): Promise<Database> {
    const opening = new Promise<Database>((resolve, reject) => {
      let isOver = false;
      const giveUp = (error: unknown): void => {
        isOver = true;
        clearTimeout(timer);
        reject(error);
      };
      const timer = setTimeout(() => giveUp(this.#noAnswer()), this.#options.patience);
      this.#request(() => giveUp(new NoStorage({ is: "blocked" })))
        .then((database) => this.#check(database))
        .then(
          (database) => {
            clearTimeout(timer);
            if (isOver) this.#arriveLate(database);
            else resolve(database);
          },
          (error: unknown) => giveUp(this.#meaning(error)),
        );
    });
    opening.catch(() => {
      if (this.#database === opening) this.#database = undefined;
    });
    return opening;
  }

  async #request(onBlocked: () => void): Promise<Database> {
    if (typeof indexedDB === "undefined") throw new NoStorage({ is: "refused", why: "no IndexedDB" });
    return openDB<Layout>(this.#name, this.#options.version ?? LAYOUT_VERSION, {
      upgrade: (database, from, _to, transaction) => upgrade(database, from, transaction, this.#options.nonce),
      blocked: () => {
        this.health.set({ is: "blocked" });
        onBlocked();
      },
      blocking: (_own, asked) => this.#giveWay(asked),
      // The browser ended the connection: the next operation opens anew.
      terminated: () => {
        this.#database = undefined;
      },
    });
  }

  /** The tab that was in the way let go at last, or a slow disk answered. */
  #arriveLate(database: Database): void {
    if (this.#database || this.#isClosed || this.health.value.is === "closed-by-newer") {
      database.close();
      return;
    }
    this.#database = Promise.resolve(database);
    this.health.set({ is: "open" });
  }

  /** Another tab wants a newer layout, or clears everything: get out of its way and say so. */
  #giveWay(asked: number | null): void {
    this.drop();
    this.health.set(asked === null ? { is: "lost", why: "removed" } : { is: "closed-by-newer" });
  }

  async #check(database: Database): Promise<Database> {
    const made = await database.get("meta", "made");
    if (this.#made !== undefined && made !== this.#made) {
      database.close();
      throw new NoStorage({ is: "lost", why: "removed" });
    }
    this.#made = made;
    return database;
  }

  #noAnswer(): NoStorage {
    return new NoStorage({ is: this.#made === undefined ? "refused" : "lost", why: NO_ANSWER });
  }

  /** A first opening that fails is a refusal; a later one is a loss and worth another try. */
  #meaning(error: unknown): unknown {
    const health = storageTrouble(error)?.health;
    if (health?.is !== "lost" || this.#made !== undefined || error instanceof NoStorage) return error;
    return new NoStorage({ ...health, is: "refused" });
  }
}
