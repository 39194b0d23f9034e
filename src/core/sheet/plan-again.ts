/**
 * Plans an edition that was checked before and whose plans are gone or of an older version. Only conditions are looked
 * at: the rest was found good when the edition was made.
 */
import { PLAN_VERSION } from "../expr/run.js";
import { fail, ok, type Result } from "../terms/index.js";
import { withBrought } from "./brings.js";
import type { BareCommon, BareSheet, BuiltCommon, BuiltSheet, Plans } from "./built.js";
import { checkConditions } from "./checks/conditions.js";
import { checking } from "./checks/known.js";
import { declarationsFor, type Surroundings } from "./declare.js";
import { lookupFor, type Part, partOfCommon, partOfSheet } from "./lookup.js";
import { reporting } from "./reporting.js";
import { pathOnly } from "./source.js";

/** A frozen sheet or the frozen shared files, with the edition they were given. */
export interface Edition<Bare> {
  readonly edition: string;
  readonly bare: Bare;
}

/** All of a visit together: conditions may name each other's points. Fails when one no longer can be planned. */
export function planAgain(
  common: Edition<BareCommon>,
  sheets: readonly Edition<BareSheet>[],
  around: Surroundings = {},
): Result<{ readonly common: BuiltCommon; readonly sheets: readonly BuiltSheet[] }> {
  const bare = withBrought(
    common.bare,
    sheets.map((s) => s.bare),
  );
  const whole = { ...bare, texts: {}, cases: [], complaints: [] };
  const parts = sheets.map((s) => partOfSheet({ ...s.bare, texts: {}, cases: [] }));
  const plan = (part: Part): Result<Plans> => {
    const report = reporting(pathOnly);
    const c = checking(lookupFor(part, whole, parts), report);
    const plans = checkConditions(declarationsFor(c.look, around), c);
    return report.problems().length > 0 ? fail(...report.problems()) : ok(plans);
  };
  const shared = plan(partOfCommon(whole));
  const own = parts.map(plan);
  const problems = [shared, ...own].flatMap((p) => (p.ok ? [] : p.problems));
  if (problems.length > 0 || !shared.ok) return fail(...problems);
  return ok({
    common: { common: common.bare, plans: shared.value, planVersion: PLAN_VERSION, edition: common.edition },
    sheets: sheets.flatMap(({ bare, edition }, i) => {
      const plans = own[i];
      return plans?.ok ? [{ sheet: bare, plans: plans.value, planVersion: PLAN_VERSION, edition }] : [];
    }),
  });
}
