/**
 * What a picture belongs to, and from where the camera was opened, as one text in an address. Knows points, places and
 * findings by their ids only.
 */
import type { Bodies } from "../../core/record/contract.js";
import { type ParamsOf, to } from "./routes.js";
import type { PointAt } from "./standing.js";

/** What a picture is pinned to; nothing: it lies unsorted. */
export type PictureSpot = Pick<Bodies["picture"], "point" | "place" | "state" | "fault">;
/** `tray`: pinned to nothing yet. */
export type Pin = "point" | "fault" | "place" | "tray";

/** Where the camera was opened: at a point, on a finding, for a place, or nowhere in particular. */
export type CameraFrom =
  | { readonly at: "point"; readonly point: PointAt }
  | { readonly at: "fault"; readonly fault: string; readonly place: string }
  | { readonly at: "place"; readonly place: string }
  | { readonly at: "visit" };

export interface CameraAim {
  readonly pin: Pin;
  readonly from: CameraFrom;
}

const SEPARATOR = "~";
/** What can be chosen where, the narrowest first. */
const PINS: Readonly<Record<CameraFrom["at"], readonly Pin[]>> = {
  point: ["point", "place", "tray"],
  fault: ["fault", "place", "tray"],
  place: ["place", "tray"],
  visit: ["tray"],
};
export const pinsFor = (from: CameraFrom): readonly Pin[] => PINS[from.at];

function partsOf(from: CameraFrom): readonly string[] {
  if (from.at === "point") return [from.point.state, from.point.place, from.point.point];
  if (from.at === "fault") return [from.fault, from.place];
  return from.at === "place" ? [from.place] : [];
}

function fromParts(parts: readonly string[]): CameraFrom | undefined {
  if (parts.includes("")) return undefined;
  const [a, b, c] = parts;
  if (a === undefined) return { at: "visit" };
  if (b === undefined) return { at: "place", place: a };
  if (c === undefined) return { at: "fault", fault: a, place: b };
  return parts.length === 3 ? { at: "point", point: { state: a, place: b, point: c } } : undefined;
}

/** The aim as one text of an address. */
export const aimText = ({ pin, from }: CameraAim): string => [pin, ...partsOf(from)].join(SEPARATOR);

/** Reads it back; undefined when it is none of ours. */
export function readAim(text: string): CameraAim | undefined {
  const [pin, ...parts] = text.split(SEPARATOR);
  const from = fromParts(parts);
  const known = from && pinsFor(from).find((one) => one === pin);
  return from && known && { pin: known, from };
}

/** The camera's address; without `pin` what is shot belongs to the narrowest there is. */
export function cameraHref(visit: string, from: CameraFrom, pin: Pin = pinsFor(from)[0] ?? "tray"): string {
  return to("camera", { visit, aim: aimText({ pin, from }) } satisfies ParamsOf<"camera">);
}

/** What a picture shot with this aim is pinned to. */
export function spotOf({ pin, from }: CameraAim): PictureSpot {
  if (pin === "tray" || from.at === "visit") return {};
  if (pin === "point" && from.at === "point") {
    const { point, place, state } = from.point;
    return { point, place, state };
  }
  if (pin === "fault" && from.at === "fault") return { fault: from.fault, place: from.place };
  return { place: from.at === "point" ? from.point.place : from.place };
}

/** Whether a picture lies unsorted. */
export const isUnsorted = ({ point, place, fault }: PictureSpot): boolean =>
  point === undefined && place === undefined && fault === undefined;

/** Whether two pictures belong to the same. */
export const sameSpot = (a: PictureSpot, b: PictureSpot): boolean =>
  a.point === b.point && a.place === b.place && a.state === b.state && a.fault === b.fault;
