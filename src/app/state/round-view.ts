/**
 * The round as the screen shows it: the open point with its replies, the folded points below, the ticks and
 * the next action. Pure: replies, what is asked and the words of the sheets in; no grade ever comes out.
 */
import type { Asked, Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { type Audience, keyText, type NonAnswer, type Reason } from "../../core/terms/index.js";
import { t } from "../texts/round.js";
import {
  becauseSays,
  capital,
  type FieldKind,
  fieldKind,
  fieldName,
  type Knowledge,
  placeName,
  pointName,
  questionOf,
  replyWord,
  stateName,
} from "./knowledge.js";
import { keyOf, nonAnswerAt, type PointAt, pointText, replyAt } from "./standing.js";
import { isDone, nextOpen, type PointsAt, type Stop, stopAt, stopsOf } from "./stops.js";
import { nonAnswerText, replyText } from "./telling.js";

/** What the round is worked out from. */
export interface Looking {
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly who: Audience;
  /** What an earlier reply was taken for is not said. */
  readonly quiet?: boolean;
  readonly asked: readonly Asked[];
  /** Points the complaint puts first. */
  readonly suggested: Assessment["suggested"];
  readonly visit: Pick<VisitState, "replies" | "notes" | "pictures">;
}

/** One field of the open point, ready to be answered. */
export interface FieldView {
  /** Whose field it is: the open point's, or one's that is asked in the same entry. */
  readonly at: PointAt;
  readonly name: string;
  readonly label: string;
  readonly kind: FieldKind;
  readonly several: boolean;
  /** Said of the replies where several may stand together. */
  readonly says?: string;
  readonly words: readonly { readonly id: string; readonly words: string; readonly chosen: boolean }[];
  /** What stands, in words; for readings, counts, yes and date codes. */
  readonly reply?: string;
  /** Whether yes or no stands. */
  readonly yes?: boolean;
  readonly count?: { readonly from: number; readonly to: number; readonly stands?: number };
  readonly dateCode?: "week-year" | "year" | "month-year";
  readonly differ: boolean;
}

export interface OpenPoint {
  readonly at: PointAt;
  readonly question: string;
  readonly how?: string;
  readonly trap?: string;
  /** Owner: why this is left to the workshop. */
  readonly leave?: string;
  readonly fields: readonly FieldView[];
  readonly nonAnswer?: { readonly nonAnswer: NonAnswer; readonly reason?: Reason; readonly says: string };
  readonly notes: readonly string[];
  readonly pictures: readonly { readonly id: string; readonly blob: string; readonly thumb?: string }[];
  readonly done: boolean;
}

/** A point of this stop as a folded row. */
export interface FoldedPoint {
  readonly at: PointAt;
  readonly number: number;
  readonly name: string;
  readonly says?: string;
  readonly done: boolean;
}

export interface RoundView {
  readonly place: string;
  readonly state: string;
  /** How the car must stand for what comes now: until something is answered in this state. */
  readonly begins?: string;
  readonly number: number;
  readonly of: number;
  readonly ticks: readonly ("done" | "here" | "open")[];
  readonly open: OpenPoint;
  readonly folded: readonly FoldedPoint[];
  /** Points of this place that are not asked as things stand, but may be looked at. */
  readonly also: readonly { readonly at: PointAt; readonly name: string }[];
  readonly next?: { readonly at: PointAt; readonly words: string; readonly says?: string };
  readonly stop: Stop;
  readonly stops: readonly Stop[];
}

const here = <
  Item extends { readonly value: { readonly point?: string; readonly place?: string; readonly state?: string } },
>(
  items: readonly Item[],
  at: PointAt,
): readonly Item[] =>
  items.filter(
    ({ value }) =>
      value.point === at.point && value.place === at.place && (value.state === undefined || value.state === at.state),
  );

/** What stands for a point in one line: its replies, or why there is none. */
export function repliedText(
  { known, who, visit }: Pick<Looking, "known" | "who" | "visit">,
  at: PointAt,
): string | undefined {
  const nonAnswer = nonAnswerAt(visit.replies, at);
  if (nonAnswer) return nonAnswerText(nonAnswer);
  const point = known.points.get(at.point);
  const said = Object.keys(point?.point.fields ?? {}).flatMap((field) => {
    const value = replyAt(visit.replies, at, field);
    return value ? [replyText(point, field, value, who)] : [];
  });
  return said.length > 0 ? said.join(", ") : undefined;
}

function fieldViews({ known, who, visit }: Looking, at: PointAt): readonly FieldView[] {
  const point = known.points.get(at.point);
  if (!point) return [];
  return Object.entries(point.point.fields).map(([name, field]) => {
    const value = replyAt(visit.replies, at, name);
    const chosen = value?.type === "words" ? value.words : [];
    const several = "words" in field && field.several === true;
    return {
      at,
      name,
      label: fieldName(point.text, name),
      kind: fieldKind(field),
      several,
      ...(several ? { says: t("round.several") } : {}),
      words:
        "words" in field
          ? field.words.map((word) => ({
              id: word,
              words: replyWord(point.text, name, word, who),
              chosen: chosen.includes(word),
            }))
          : [],
      ...(value && value.type !== "words" ? { reply: replyText(point, name, value, who) } : {}),
      ...(value?.type === "yes" ? { yes: value.yes } : {}),
      ...("count" in field
        ? { count: { ...field.count, ...(value?.type === "count" ? { stands: value.count } : {}) } }
        : {}),
      ...("dateCode" in field ? { dateCode: field.dateCode } : {}),
      differ: visit.replies.get(keyText(keyOf(at, name)))?.differ ?? false,
    };
  });
}

/** A point without the list of its fellows: what an address and a reply name. */
const plain = ({ state, place, point }: PointAt): PointAt => ({ state, place, point });

function openPoint(looking: Looking, asked: PointsAt): OpenPoint {
  const { known, who, visit } = looking;
  const at = plain(asked);
  const point = known.points.get(at.point);
  const nonAnswer = nonAnswerAt(visit.replies, at);
  const fields = [at, ...(asked.with ?? []).map((fellow) => ({ ...at, point: fellow }))].flatMap((one) =>
    fieldViews(looking, one),
  );
  const leave = who === "owner" && point && !point.point.who.includes("owner") ? point.text.leave : undefined;
  return {
    at,
    question: point ? questionOf(point.text, who) : at.point,
    ...(point?.text.how !== undefined ? { how: point.text.how } : {}),
    ...(point?.text.trap !== undefined ? { trap: point.text.trap } : {}),
    ...(leave !== undefined ? { leave } : {}),
    fields,
    ...(nonAnswer
      ? {
          nonAnswer: {
            nonAnswer: nonAnswer.nonAnswer,
            ...(nonAnswer.reason ? { reason: nonAnswer.reason } : {}),
            says: nonAnswerText(nonAnswer),
          },
        }
      : {}),
    notes: here(visit.notes, at).map(({ value }) => value.text),
    pictures: here(visit.pictures, at).map(({ id, value }) => ({
      id,
      blob: value.blob,
      ...(value.thumb ? { thumb: value.thumb } : {}),
    })),
    done: isDone(known, visit.replies, asked),
  };
}

function nextAction({ known, visit }: Looking, stops: readonly Stop[], at: PointAt): RoundView["next"] {
  const next = nextOpen(known, stops, visit.replies, at);
  if (!next) return undefined;
  if (next.state !== at.state)
    return {
      at: next,
      words: t("round.now", { state: stateName(known, next.state) }),
      says: capital(placeName(known, next.place)),
    };
  if (next.place !== at.place)
    return { at: next, words: t("round.next-place"), says: capital(placeName(known, next.place)) };
  return { at: next, words: t("round.next") };
}

/**
 * Points at a place that wait for a reply which did not call for them ("felt first, measured second"). Not asked, but
 * never out of reach.
 */
function alsoHere({ known, tree, who, asked }: Looking, stop: Pick<Stop, "place" | "state">): readonly PointAt[] {
  const here = asked.filter(({ place }) => place === stop.place).flatMap((one) => [one.point, ...one.with]);
  return [...known.points.values()].flatMap(({ point }) =>
    point["asked-when"] !== undefined &&
    point.who.includes(who) &&
    point.states.includes(stop.state) &&
    tree.ofKind(point.place).includes(stop.place) &&
    !here.includes(point.id)
      ? [{ state: stop.state, place: stop.place, point: point.id }]
      : [],
  );
}

/** The stop with a point of {@link alsoHere} asked last; as it is when that point is asked anyway or can't be here. */
function withAlso(looking: Looking, stop: Stop, at: PointAt): Stop {
  const isAsked = stop.asked.some((one) => pointText(one) === pointText(at));
  const point = looking.known.points.get(at.point)?.point;
  if (isAsked || !point || !alsoHere(looking, stop).some((one) => pointText(one) === pointText(at))) return stop;
  const extra: Asked = {
    ...plain(at),
    fields: Object.keys(point.fields),
    with: [],
    safetyCritical: point["safety-critical"] === true,
    openedBy: [],
  };
  return { ...stop, asked: [...stop.asked, extra] };
}

/** The screen at one point; undefined when the point is not asked in this visit and can't be looked at there. */
export function roundView(looking: Looking, at: PointAt): RoundView | undefined {
  const { known, visit } = looking;
  const stops = stopsOf(known, looking.who, looking, visit.replies);
  const standing = stopAt(stops, at) ?? { state: at.state, place: at.place, asked: [], done: 0 };
  const stop = withAlso(looking, standing, at);
  const index = stop.asked.findIndex((one) => pointText(one) === pointText(at));
  if (index < 0) return undefined;
  const done = stop.asked.map((one) => isDone(known, visit.replies, one));
  const folded = stop.asked.flatMap((one, place) => {
    if (place === index) return [];
    const replied = repliedText(looking, one);
    const opened = one.openedBy[0];
    const says =
      replied ??
      (opened === undefined || looking.quiet
        ? undefined
        : t("round.opened-by", { why: becauseSays(known, opened, looking.who) }));
    return [
      {
        at: one,
        number: place + 1,
        name: pointName(known, one.point),
        done: done[place] ?? false,
        ...(says === undefined ? {} : { says }),
      },
    ];
  });
  const next = nextAction(looking, stops, at);
  const how = known.words.states[at.state]?.how;
  return {
    place: capital(placeName(known, at.place)),
    state: stateName(known, at.state),
    ...(how !== undefined && stops.every((one) => one.state !== at.state || one.done === 0) ? { begins: how } : {}),
    number: index + 1,
    of: stop.asked.length,
    ticks: done.map((one, place) => (place === index ? "here" : one ? "done" : "open")),
    open: openPoint(looking, stop.asked[index] ?? at),
    // What lies ahead first, then what was passed: nothing of the stop is out of reach.
    folded: [...folded.filter((row) => row.number > index + 1), ...folded.filter((row) => row.number <= index)],
    also: alsoHere(looking, stop)
      .filter((one) => pointText(one) !== pointText(at))
      .map((one) => ({ at: one, name: pointName(known, one.point) })),
    ...(next ? { next } : {}),
    stop,
    stops,
  };
}
