/**
 * The demo's story in order: an invented low-volume mid-engined car, three visits over two years, three invented people.
 * Replies only; every grade comes from the rules, but for the few that people give themselves.
 */
import { FIRST } from "./first.js";
import { SECOND } from "./second.js";
import type { Story } from "./tell.js";
import { THIRD } from "./third.js";

/** The sheets its visits were opened with. */
export const DEMO_SHEETS: readonly string[] = ["susp", "whl", "brk", "corr", "drn"];

export const STORIES: readonly Story[] = [FIRST, SECOND, THIRD];
