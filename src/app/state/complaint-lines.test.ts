/** Where a complaint leads: to the points it puts first, as a suggestion. */
import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import type { Opened } from "../../core/assess/contract.js";
import { foldVisit, type VisitState } from "../../core/record/index.js";
import type { Telling } from "./because.js";
import { complaintLines } from "./complaint-lines.js";

const telling: Telling = { known: miniKnowledge(), who: "technician", visit: "v", car: "c", pictures: [] };
const said = (text: string, complaint?: string): VisitState["complaints"][number] => ({
  id: `said ${text}`,
  at: { wall: 1, count: 0 },
  by: "p",
  value: { replaces: [], text, ...(complaint === undefined ? {} : { complaint }) },
});
const first = (point: string, place: string, because = "sym.hum"): Opened => ({ point, place, because });
const SUGGESTED = [first("hub.spin", "FL"), first("hub.spin", "FR"), first("hub.float", "FR")];

test("a complaint names what it may come from and leads to the points it puts first, one row a point", () => {
  const [line] = complaintLines(telling, { ...foldVisit([]), complaints: [said("It hums", "sym.hum")] }, SUGGESTED);
  expect(line).toMatchObject({ text: "“It hums”", second: "Hum: Hub", more: 0 });
  expect(line?.first).toEqual([
    { id: "hub.spin", title: "Spin", places: "Front left, Front right", href: "#/visit/v/round/w7-hang/FL/hub.spin" },
    { id: "hub.float", title: "Float", places: "Front right", href: "#/visit/v/round/w7-hang/FR/hub.float" },
  ]);
});

test("a point that another complaint put first before it is suggested under both", () => {
  const earlier = SUGGESTED.map((one) => ({ ...one, because: "sym.another" }));
  const [line] = complaintLines(telling, { ...foldVisit([]), complaints: [said("It hums", "sym.hum")] }, earlier);
  expect(line?.first.map(({ id }) => id)).toEqual(["hub.spin", "hub.float"]);
});

test("words nobody knows suggest nothing, and a closed visit suggests nothing any more", () => {
  const unknown = complaintLines(telling, { ...foldVisit([]), complaints: [said("It smells of roses")] }, SUGGESTED);
  expect(unknown).toEqual([{ id: "said It smells of roses", text: "“It smells of roses”", first: [], more: 0 }]);
  const gone = complaintLines(telling, { ...foldVisit([]), complaints: [said("It sings", "sym.gone")] }, SUGGESTED);
  expect(gone).toEqual([{ id: "said It sings", text: "“It sings”", first: [], more: 0 }]);
  const closed: VisitState = {
    ...foldVisit([]),
    complaints: [said("It hums", "sym.hum")],
    closed: { id: "x", at: { wall: 2, count: 0 }, by: "p", value: { replaces: [], assessment: "blob", engine: "1" } },
  };
  expect(complaintLines(telling, closed, SUGGESTED)[0]).toMatchObject({ second: "Hum: Hub", first: [], more: 0 });
});
