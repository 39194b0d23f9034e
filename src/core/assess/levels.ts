/** The worst and the mildest of several grade levels. Knows no grade by name. */
import type { GradeLevel } from "../terms/index.js";

// the greatest or least of some levels is one of them, so both are levels

/** The worst of these; 0 (no grade) for none. */
export const worstOf = (...levels: readonly GradeLevel[]): GradeLevel => Math.max(0, ...levels) as GradeLevel;

/** The mildest of these; 0 (no grade) for none. */
export const mildestOf = (...levels: readonly GradeLevel[]): GradeLevel =>
  (levels.length === 0 ? 0 : Math.min(...levels)) as GradeLevel;
