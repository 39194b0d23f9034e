/** Beginning work on a check sheet: a new one, one that is at hand, or a copy of it under another id. */
import type { Sheet } from "../../core/sheet/run.js";
import { copiedSheet, freshId, freshSheetId, idPrefix } from "../../core/sheet/work.js";
import type { App } from "./app.js";
import type { FrozenSheetFile } from "./frozen.js";
import { newPoint, newPointWords } from "./sheet-new-item.js";
import { takenSheets } from "./sheet-taken.js";
import { wholeSheet } from "./sheet-work.js";
import { beginWork, fileOf } from "./sheet-work-acts.js";
import type { SheetAtHand } from "./sheets-at-hand.js";
import { LANGUAGE } from "./shelf.js";

type Beginning = Pick<App, "journal" | "phone" | "sheetTools">;

/** The sheet with what proves it, so that nothing is lost by working on it. */
async function withCases({ sheetTools }: Beginning, own: boolean, file: FrozenSheetFile): Promise<FrozenSheetFile> {
  if (own || file.cases !== undefined) return file;
  return { ...file, cases: await (await sheetTools()).casesOf(file.sheet.id) };
}

const idFor = ({ journal }: Beginning, name: string, atHand: readonly SheetAtHand[]): string => {
  const house = journal.keptHouse().peek();
  return freshSheetId(name, house.is === "open" ? takenSheets(house.state, atHand) : atHand.map(({ id }) => id));
};

/** Begins to change a sheet at hand under its own id. */
export async function beginChange(app: Beginning, own: boolean, file: FrozenSheetFile): Promise<boolean> {
  const whole = await withCases(app, own, file);
  return beginWork(app.journal, app.phone, own ? whole : { ...whole, begunFrom: file.edition });
}

/** Begins a sheet of one's own out of another; its id, or undefined when nothing was kept. */
export async function beginCopy(
  app: Beginning,
  own: boolean,
  file: FrozenSheetFile,
  title: string,
  atHand: readonly SheetAtHand[],
): Promise<string | undefined> {
  const id = idFor(app, title, atHand);
  const copy = copiedSheet(wholeSheet(await withCases(app, own, file)), id, title);
  return (await beginWork(app.journal, app.phone, await fileOf(app.phone, copy))) ? id : undefined;
}

export interface NewSheetSaid {
  readonly title: string;
  readonly about: string;
  /** Kind of place its first point looks at. */
  readonly place: string;
  /** Car state it is looked at in. */
  readonly state: string;
  /** What its first point is called. */
  readonly first: string;
}

/** A sheet with one point and nothing else, so that there is something to mend and to try. */
export function blankSheet(id: string, { title, about, place, state, first }: NewSheetSaid): Sheet {
  const point = freshId(idPrefix(id, "points"), first, []);
  return {
    format: "leadlamp-sheet/1",
    id,
    label: title,
    points: [newPoint(point, place, state)],
    limits: [],
    derived: [],
    rules: [],
    jobs: [],
    gates: [],
    nextLooks: [],
    cases: [],
    texts: {
      [LANGUAGE]: {
        language: LANGUAGE,
        title,
        about,
        points: { [point]: newPointWords(first) },
        faults: {},
        jobs: {},
      },
    },
  };
}

/** Begins a new sheet; its id, or undefined when nothing was kept. */
export async function beginNew(
  app: Beginning,
  said: NewSheetSaid,
  atHand: readonly SheetAtHand[],
): Promise<string | undefined> {
  const id = idFor(app, said.title, atHand);
  return (await beginWork(app.journal, app.phone, await fileOf(app.phone, blankSheet(id, said)))) ? id : undefined;
}
