// Published critical-path tables: every earliest and latest start and finish, and both floats.
import { expect, test } from "vitest";
import { criticalPath } from "../../src/core/plan/index.js";
import { TABLES } from "./facts/critical-path.js";

test.each(TABLES)("[PD1] %s", (_, finish, critical, rows) => {
  const path = criticalPath(
    rows.map(([id, duration, preds]) => ({ id, duration, preds: preds.split(" ").filter(Boolean) })),
  );
  if (!path.ok) throw new Error("planned");
  const table = path.value.rows.map(({ id, es, ef, ls, lf, total, free }) => [id, es, ef, ls, lf, total, free]);
  expect(table).toEqual(rows.map(([id, , , ...figures]) => [id, ...figures]));
  expect(path.value.finish).toBe(finish);
  expect([...path.value.critical].sort()).toEqual(critical.split(" ").sort());
});
