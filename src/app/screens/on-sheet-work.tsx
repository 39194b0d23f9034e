/** Waits until a working copy of a sheet is read, then draws what is inside. */
import type { ComponentChildren } from "preact";
import { useApp } from "../state/app.js";
import { draftOf, type SheetWork } from "../state/sheet-work.js";
import { MissingScreen } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { useSheetWork } from "./use-sheet-work.js";

export function OnSheetWork({
  sheet,
  children,
}: {
  readonly sheet: string;
  readonly children: (work: SheetWork) => ComponentChildren;
}) {
  const { journal } = useApp();
  const house = journal.house().value;
  const work = useSheetWork(sheet);
  if (work) return <>{children(work)}</>;
  const waits = house.is === "opening" || (house.is === "open" && draftOf(house.state, sheet) !== undefined);
  return waits ? <OpeningScreen /> : <MissingScreen />;
}
