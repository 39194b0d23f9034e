/** Keeps what was made of the replies covered while someone may read along. */
import type { ComponentChildren } from "preact";
import { isUncovered } from "../state/covers.js";
import type { CoverProps } from "./cover.js";
import { lazy } from "./lazy.js";

const Cover = lazy(() => import("./cover.js").then((file) => file.Cover));

export function Covered({ children, ...cover }: CoverProps & { readonly children: ComponentChildren }) {
  const { on } = cover;
  return !on.quiet || on.visit.closed || isUncovered(on.stream) ? children : <Cover {...cover} />;
}
