/**
 * Which seasonal check a visit is: the reply to one point of the lay-up sheet, given on the form already. What belongs to
 * the other season is then not asked, by the sheet's own conditions: nothing is put down for it, and nothing of it counts.
 */
import type { VisitState } from "../../core/record/index.js";
import { fieldOf } from "../../core/sheet/run.js";
import type { ReplyKey } from "../../core/terms/index.js";
import type { Opening } from "./car-acts.js";
import type { FrozenSheetFile } from "./frozen.js";
import type { VisitForm } from "./new-visit.js";
import { replyAt } from "./standing.js";

/** Replies of the point, in the order of a year. */
export const SEASONS = ["put-away", "monthly-look", "wake-up", "in-use"] as const;
export type Season = (typeof SEASONS)[number];

const SEASON_SHEET = "rest";
const SEASON_KEY: ReplyKey = { point: "rest.season", place: "car", state: "w0-talk", field: "now" };

/** Whether one of these sheets asks which season it is. */
export const asksSeason = (sheets: readonly { readonly id: string }[]): boolean =>
  sheets.some(({ id }) => id === SEASON_SHEET);

/**
 * The reply as the visit opens with it. Nothing where the visit is for something else by now, or where the sheet, in the
 * edition it is frozen in, does not ask in these words: the round asks then.
 */
export function seasonReplies(
  { purpose, season }: Pick<VisitForm, "purpose" | "season">,
  files: readonly Pick<FrozenSheetFile, "sheet">[],
): NonNullable<Opening["replies"]> {
  const point = files.flatMap(({ sheet }) => sheet.points).find(({ id }) => id === SEASON_KEY.point);
  const field = point && fieldOf(point, SEASON_KEY.field);
  const isAsked =
    point?.states.includes(SEASON_KEY.state) === true &&
    field !== undefined &&
    "words" in field &&
    season !== undefined &&
    field.words.includes(season);
  return purpose === "season" && isAsked ? [{ key: SEASON_KEY, value: { type: "words", words: [season] } }] : [];
}

/** Which it is; undefined while nobody has said. */
export function seasonOf(replies: VisitState["replies"]): Season | undefined {
  const { field, ...at } = SEASON_KEY;
  const value = replyAt(replies, at, field);
  return value?.type === "words" ? SEASONS.find((one) => value.words.includes(one)) : undefined;
}
