/** The few drawn signs there are: photo, sound, onward, back, tick, alert, keeping strokes. Always beside words. */
import type { ComponentChildren } from "preact";
import type { KeepingKind } from "./props-frame.js";

interface LineProps {
  readonly size: number;
  readonly thick: number;
  readonly children: ComponentChildren;
}

/** A line drawing in the colour of the text, growing with it. */
function Line({ size, thick, children }: LineProps) {
  return (
    <svg
      width={`${size / 17}rem`}
      height={`${size / 17}rem`}
      viewBox="0 0 26 26"
      fill="none"
      stroke="currentColor"
      stroke-width={thick}
      stroke-linejoin="round"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

export function PhotoIcon() {
  return (
    <Line size={26} thick={2}>
      <path d="M3 8H8L10 5H16L18 8H23V21H3Z" />
      <circle cx="13" cy="14" r="4" />
    </Line>
  );
}
export function SoundIcon() {
  return (
    <Line size={26} thick={2.2}>
      <path stroke-linecap="round" d="M3 11V15M8 7V19M13 3V23M18 8V18M23 11V15" />
    </Line>
  );
}
export function OnwardIcon() {
  return (
    <Line size={26} thick={3}>
      <path stroke-linejoin="miter" d="M9 4L18 13L9 22" />
    </Line>
  );
}
export function BackIcon() {
  return (
    <Line size={15} thick={3.4}>
      <path stroke-linejoin="miter" d="M17 4L8 13L17 22" />
    </Line>
  );
}
export function TickIcon() {
  return (
    <Line size={24} thick={3.8}>
      <path stroke-linejoin="miter" d="M4 14L11 21L23 6" />
    </Line>
  );
}
/** Safety alert symbol of the signal-word panels; nowhere else. Triangle in the panel's ink, sign in its ground. */
export function AlertIcon() {
  return (
    <svg class="alert" viewBox="0 0 28 25" aria-hidden="true">
      <path
        fill="currentColor"
        fill-rule="evenodd"
        d="M14 .8L27.4 24.2H.6ZM12.4 8.6L13 16.2H15L15.6 8.6ZM12.5 17.8V20.8H15.5V17.8Z"
      />
    </svg>
  );
}

/** Whole, dashed, gapped, between stops, broken with a slash. */
const STROKES: Readonly<Record<KeepingKind, string>> = {
  kept: "M4 10H28",
  keeping: "M4 10H8M12 10H16M20 10H24",
  "no-signal": "M4 10H12M20 10H28",
  room: "M2 3V17M30 3V17M2 10H26",
  error: "M3 10H11M21 10H29M12 17L20 3",
};

export function KeepingStroke({ kind }: { readonly kind: KeepingKind }) {
  return (
    <svg
      width="1.53rem"
      height="0.95rem"
      viewBox="0 0 32 20"
      fill="none"
      stroke="currentColor"
      stroke-width="3"
      aria-hidden="true"
    >
      <path d={STROKES[kind]} />
    </svg>
  );
}
