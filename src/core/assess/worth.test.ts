// What a point could decide where a rule raises the fault it finds, and which points stop a start or a drive.
import { expect, test } from "vitest";
import { planned } from "../../../tests/support/small-car.js";
import { HUB_SHEET, JOINT_SHEET, rule, SMALL_COMMON } from "../../../tests/support/small-sheets.js";
import { TRADE_WORK } from "../trade/index.js";
import { prepare, type Worth, worthOf } from "./index.js";

/** The worth of the small car's points with one more rule over what is heard at a wheel. */
function worthsWith(fault: string, grade: "minor" | "major" | "dangerous"): ReadonlyMap<string, Worth> {
  const more = rule("hub.t1", "corner", fault, grade, 'hub.listen == "grumble"');
  const built = planned(SMALL_COMMON, [{ ...HUB_SHEET, rules: [...HUB_SHEET.rules, more] }, JOINT_SHEET]);
  return worthOf(prepare(built.common, built.sheets, TRADE_WORK), built.common, built.sheets);
}
const heard = (fault: string, grade: "minor" | "major" | "dangerous") => worthsWith(fault, grade).get("hub.listen");

test("[VO1] a point that finds a fault some rule raises could have shown it one step worse, never above dangerous", () => {
  expect(heard("hub.play", "minor")).toMatchObject({ decides: 3 });
  expect(heard("hub.play", "major")).toMatchObject({ decides: 4 });
  expect(heard("hub.play", "dangerous")).toMatchObject({ decides: 4 });
  expect(heard("hub.water", "minor"), "nothing raises that").toMatchObject({ decides: 2 });
});

test("[VO1] what only a raising rule asks could have shown the fault one step worse; alone it says what its own rule does", () => {
  expect(worthsWith("hub.play", "major").get("joi.boot")).toMatchObject({ decides: 4, alone: 2 });
});

test("[VO1] by itself it says no more than its own rule does: the raise looks at something else", () => {
  expect(heard("hub.play", "minor")).toMatchObject({ alone: 2 });
});

test("[HO44] a point stops the car where a reply trips a check before the road, and not where it stops a touch", () => {
  const worths = worthsWith("hub.water", "minor");
  expect(worths.get("hub.rock")?.stops).toBe(true);
  expect(worths.get("hub.heat")?.stops, "it stops a hand, not the car").toBeUndefined();
  expect(worths.get("hub.nuts")?.stops, "clearing is waited for; nothing it says trips").toBeUndefined();
});

test("[VO5] a gate before a sheet's own car state stops the car where the sheet says that the engine runs in it", () => {
  const stopsBefore = (engine: "running" | undefined): boolean | undefined => {
    const own = { id: "z1-idling", order: 3, lifted: false, plan: "body", ...(engine ? { engine } : {}) } as const;
    const gate = {
      id: "gate.idle",
      guards: "z1-idling",
      starts: "cleared",
      trips: ['places("corner").exists(c, c.hub.listen == "grumble")'],
      cautions: [],
    };
    const common = {
      ...SMALL_COMMON,
      states: [...SMALL_COMMON.states, own],
      gates: [...SMALL_COMMON.gates, gate as never],
    };
    const built = planned(common, [HUB_SHEET, JOINT_SHEET]);
    return worthOf(prepare(built.common, built.sheets, TRADE_WORK), built.common, built.sheets).get("hub.listen")
      ?.stops;
  };
  expect(stopsBefore("running")).toBe(true);
  expect(stopsBefore(undefined)).toBeUndefined();
});
