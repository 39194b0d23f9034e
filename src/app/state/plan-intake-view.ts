/**
 * The talk when a car is taken in: what is asked, short answers, what is said so far. An answer is one text: a short
 * answer, words of one's own, or both with a colon between. Pure.
 */
import type { PlanState, VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { t } from "../texts/plan-intake.js";
import { capital, type Knowledge, placeName } from "./knowledge.js";
import { odometerText } from "./odometer.js";
import { cameraHref } from "./picture-spot.js";
import { last } from "./plan-input.js";
import { to } from "./routes.js";

export interface IntakeItem {
  readonly id: string;
  readonly title: string;
  readonly help?: string;
  /** Short answers; none where only one's own words will do. */
  readonly answers: readonly string[];
  /** As it stands; undefined while nobody has said it. */
  readonly says?: string;
  /** Two people said different things. */
  readonly differs: boolean;
  readonly camera?: string;
}

export interface IntakeGroup {
  readonly id: string;
  readonly heading: string;
  readonly says?: string;
  readonly items: readonly IntakeItem[];
}

/** The odometer belongs to the visit: shown here, said there. */
export interface OdometerItem {
  readonly title: string;
  readonly says?: string;
  readonly href: string;
}

export interface IntakeView {
  readonly groups: readonly IntakeGroup[];
  readonly odometer: OdometerItem;
  readonly unsaid: number;
}

interface TakenIn {
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly visit: VisitState;
  readonly said: PlanState;
  /** The visit in addresses. */
  readonly param: string;
}

export function intakeView({ known, tree, visit, said, param }: TakenIn): IntakeView {
  const item = (id: string, title: string, answers: readonly string[], more: Partial<IntakeItem> = {}): IntakeItem => {
    const standing = said.intake.get(id) ?? [];
    const says = last(standing);
    const differs = new Set(standing.map(({ value }) => value)).size > 1;
    return { id, title, answers, differs, ...(says === undefined ? {} : { says }), ...more };
  };
  const corner = (place: string): IntakeItem =>
    item(
      `corner.${place}`,
      capital(placeName(known, place)),
      [t("intake.corner.sound"), t("intake.corner.marked"), t("intake.corner.damaged")],
      { camera: cameraHref(param, { at: "place", place }) },
    );
  const anywhere = { camera: cameraHref(param, { at: "visit" }) };
  const groups: readonly IntakeGroup[] = [
    {
      id: "corners",
      heading: t("intake.corners"),
      says: t("intake.corners.says"),
      items: tree.ofKind("corner").map(corner),
    },
    {
      id: "inside",
      heading: t("intake.inside"),
      items: [
        item(
          "dash",
          t("intake.dash"),
          [t("intake.dash.dark"), t("intake.dash.lit"), t("intake.dash.not-run")],
          anywhere,
        ),
        item("fuel", t("intake.fuel"), [
          t("intake.fuel.empty"),
          t("intake.fuel.quarter"),
          t("intake.fuel.half"),
          t("intake.fuel.three"),
          t("intake.fuel.full"),
        ]),
        item("left", t("intake.left"), [t("intake.left.nothing"), t("intake.left.things")], anywhere),
        item("keys", t("intake.keys"), [t("intake.keys.one"), t("intake.keys.two"), t("intake.keys.none")]),
      ],
    },
    {
      id: "people",
      heading: t("intake.people"),
      items: [
        item("drive", t("intake.drive"), [t("intake.drive.road"), t("intake.drive.yard"), t("intake.drive.no")], {
          help: t("intake.drive.says"),
        }),
        item("decides", t("intake.decides"), [], { help: t("intake.decides.help") }),
      ],
    },
  ];
  const reading = visit.odometer.at(-1)?.value;
  const odometer = {
    title: t("intake.odometer"),
    ...(reading ? { says: odometerText(reading) } : {}),
    href: to("visit", { visit: param }),
  };
  const unsaid = groups.flatMap(({ items }) => items).filter(({ says }) => says === undefined).length;
  return { groups, odometer, unsaid: unsaid + (reading ? 0 : 1) };
}

/** Between a short answer and words of one's own. */
const COLON = ": ";

export interface Answer {
  readonly short?: string;
  readonly own: string;
}

/** An answer taken apart: its short answer if it begins with one, and the rest. */
export function answerOf({ answers, says = "" }: Pick<IntakeItem, "answers" | "says">): Answer {
  const short = answers.find((one) => says === one || says.startsWith(`${one}${COLON}`));
  if (short === undefined) return { own: says };
  return { short, own: says.slice(short.length + COLON.length) };
}

/** The answer as one text; null when nothing of it is left. */
export function answerText({ short, own }: Answer): string | null {
  const words = own.trim();
  if (short === undefined) return words === "" ? null : words;
  return words === "" ? short : `${short}${COLON}${words}`;
}
