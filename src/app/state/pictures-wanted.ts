/** The pictures this visit's sheets ask for: which points want one, and whether it was taken. Pure. */
import type { Asked, Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import type { Audience } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { isAskedHere } from "./stops.js";

export interface PictureWanted {
  readonly asked: Asked;
  readonly taken: number;
}

interface OnVisit {
  readonly known: Knowledge;
  readonly who: Audience;
  readonly assessment: Pick<Assessment, "asked">;
  readonly visit: Pick<VisitState, "pictures">;
}

/** In walking order; a point asked in several car states stands once. */
export function picturesWanted({ known, who, assessment, visit }: OnVisit): readonly PictureWanted[] {
  const seen = new Set<string>();
  return assessment.asked
    .filter((one) => known.points.get(one.point)?.point.needs?.includes("picture") && isAskedHere(known, who, one))
    .flatMap((asked) => {
      const id = `${asked.point} ${asked.place}`;
      if (seen.has(id)) return [];
      seen.add(id);
      const taken = visit.pictures.filter(
        ({ value: { point, place } }) => point === asked.point && place === asked.place,
      ).length;
      return [{ asked, taken }];
    });
}
