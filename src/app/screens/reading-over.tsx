/** What opens over a reading when it is wanted: gauge, picture, one kept reading, where the limit comes from. */
import type { ReadingField } from "../state/reading-view.js";
import type { ParamsOf } from "../state/routes.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnDesk } from "./on-visit.js";
import { GaugeSheet, ReadingSheet, SourceSheet } from "./reading-sheets.js";
import type { ReadingState } from "./use-reading.js";

const PhotoSheet = lazy(() => import("./photo-sheet.js").then((file) => file.PhotoSheet), Nothing);

export type OverReading = "gauge" | "source" | "photo" | { readonly reading: number };

interface ReadingSheetsProps {
  readonly on: OnDesk;
  readonly params: ParamsOf<"reading">;
  readonly field: ReadingField;
  readonly state: ReadingState;
  readonly over: OverReading;
  readonly onClose: () => void;
}

export function ReadingSheets({ on, params, field, state, over, onClose }: ReadingSheetsProps) {
  const { state: carState, place, point } = params;
  return (
    <>
      <GaugeSheet
        known={on.known}
        field={field}
        unit={state.entering.unit}
        open={over === "gauge"}
        onChoose={state.setGauge}
        onClose={onClose}
      />
      {over === "photo" && <PhotoSheet on={on} at={{ state: carState, place, point }} open onClose={onClose} />}
      <ReadingSheet state={state} index={typeof over === "object" ? over.reading : undefined} onClose={onClose} />
      <SourceSheet limit={state.verdict?.limit} open={over === "source"} onClose={onClose} />
    </>
  );
}
