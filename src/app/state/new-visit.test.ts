import { expect, test } from "vitest";
import { commonFrozen, sheetFrozen } from "../../../tests/support/app-bench.js";
import { loadChecklists } from "../../build/load-checklists.js";
import { foldCar } from "../../core/record/index.js";
import { isoNow, ON_THE_BENCH, openingFrom, type VisitForm } from "./new-visit.js";

test("the moment of a visit carries the offset of where it was", () => {
  expect(isoNow(0, 0)).toBe("1970-01-01T00:00:00+00:00");
  expect(isoNow(0, 330)).toBe("1970-01-01T05:30:00+05:30");
  expect(isoNow(0, -90)).toBe("1969-12-31T22:30:00-01:30");
});

test("empty boxes leave nothing behind; the complaint is kept as spoken", () => {
  const form: VisitForm = {
    purpose: "season",
    who: "owner",
    odometer: " ",
    odometerUnit: "km",
    complaint: "",
    left: [],
  };
  const opening = openingFrom(form, foldCar([]), commonFrozen, [sheetFrozen], "2026-11-25T10:00:00+01:00");
  expect(opening).not.toHaveProperty("odometer");
  expect(opening).not.toHaveProperty("complaint");
  const said = openingFrom(
    { ...form, odometer: "61 240", complaint: " it hums ", known: "sym.hum" },
    foldCar([]),
    commonFrozen,
    [],
    "x",
  );
  expect(said).toMatchObject({
    odometer: { value: "61 240", unit: "km" },
    complaint: { text: "it hums", complaint: "sym.hum" },
  });
});

test("sheets for the bench are there, and are left out until somebody chooses them", async () => {
  const { result } = await loadChecklists("checklists");
  const ids = result.ok ? result.value.sheets.map(({ sheet }) => sheet.id) : [];
  expect(ids).toEqual(expect.arrayContaining([...ON_THE_BENCH]));
  expect(ids.length).toBeGreaterThan(ON_THE_BENCH.length);
});
