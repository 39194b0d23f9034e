/**
 * Values worked out, followed from what is typed to what stands on the screen: reading, value, limit, finding, because,
 * formula with its numbers. The figures are worked out here by hand from the published formulae.
 */
import { expect, test } from "vitest";
import { traceOf } from "../../src/app/state/because.js";
import { type Knowledge, knowledgeOf } from "../../src/app/state/knowledge.js";
import { workedOver, workingOf as workingTold, type WorkingNeeds } from "../../src/app/state/working.js";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { prepare, type Session, start, worldOf } from "../../src/core/assess/index.js";
import { link } from "../../src/core/expr/run.js";
import { TRADE_SIGNATURES, TRADE_WORK, tellSource, tellTrade } from "../../src/core/trade/index.js";
import { replies, visit } from "../support/small-car.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const { common, commonWithTexts, sheets } = result.value;
const english = <Texts>(texts: Readonly<Record<string, Texts>>): Texts => {
  const found = texts["en"];
  if (!found) throw new Error("the shipped sheets speak English");
  return found;
};
const built = sheets.map((one) => one.built);
const known: Knowledge = knowledgeOf(
  common.common,
  english(commonWithTexts.texts),
  sheets.map((one) => ({ sheet: one.built.sheet, texts: english(one.sheet.texts) })),
);
const engine = prepare(common, built, TRADE_WORK);
const trade = { TRADE_SIGNATURES, TRADE_WORK, tellSource, tellTrade };
const telling = { known, who: "technician", visit: "v", car: "c", pictures: [] } as const;

const judged = (
  said: Parameters<typeof replies>[1],
  facts: Readonly<Record<string, string | number>> = {},
): Session =>
  start(engine, visit(replies(engine, said), { sheets: built.map(({ sheet }) => sheet.id), car: { facts, limits: [] } }));
const needsOf = (session: Session) => ({
  // Only what the working asks of the judging piece.
  ground: { core: { worldOf, link } as never, session, sheets: built },
  known,
  trade,
});
function told(session: Session, fault: string, place: string) {
  const { faults, findings } = session.assessment;
  const found = faults.find((one) => one.fault === fault && one.place === place);
  if (!found) throw new Error(`${fault} at ${place} was not found: ${faults.map((one) => one.fault).join(", ")}`);
  return { found, says: plain(traceOf(telling, found, findings).map((step) => step.says)) };
}
/** The same with plain spaces between figures and units. */
const plain = <Told>(one: Told): Told => JSON.parse(JSON.stringify(one ?? null).replaceAll("\u00a0", " "));
const workingOf = (needs: WorkingNeeds, id: string, place: string) => plain(workingTold(needs, id, place));
/** U = 2u, u² = d²/12 + e²/3 (JCGM 100). */
const u = (step: number, error: number): number => Math.sqrt(step ** 2 / 12 + error ** 2 / 3);

test("wall loss: (2.00 − 1.60) ÷ 2.00 is a fifth, major on a tube that holds a wheel, with the error of both readings", () => {
  const session = judged({ "corr.wall-ref@post-FL-fore": "2.00 mm", "corr.wall@post-FL-fore": "1.60 mm" });
  // The gauge shows 0.01 mm and errs by 0.05 mm; loss = 1 − w ÷ r, so u² = (u ÷ r)² + (w u ÷ r²)².
  const [w, r] = [1.6, 2];
  const around = 2 * Math.hypot(u(0.01, 0.05) / r, (w * u(0.01, 0.05)) / r ** 2);
  expect(around).toBeCloseTo(0.037, 3);
  const { found, says } = told(session, "corr.rust", "post-FL-fore");
  expect(found.grade).toBe("major");
  expect(says).toContain("Share of the wall lost: 0.200 ± 0.037");
  const working = workingOf(needsOf(session), "corr.loss", "post-FL-fore");
  expect(working).toMatchObject({
    isKnown: true,
    names: "Wall lost at the worst place (Wall; Reference wall) ÷ 100 %",
    numbers: "20 % ÷ 100 % = 0.200 ± 0.037",
    calls: [
      {
        says: "Wall lost at the worst place",
        formula: "100 · (t(sound) − min(t₁ … tₙ)) / t(sound)",
        given: ["Readings at one place: 1.6 mm", "Sound wall to compare with: 2 mm"],
      },
    ],
  });
});

test("dew point: 8 °C at 90 % gives 6.46 °C (WMO-No. 8), so a floor at 6 °C is wet: minor", () => {
  const session = judged({
    "drn.dew.air@car": "8 Cel",
    "drn.dew.humidity@car": "90 %",
    "drn.floor-temp@car": "6 Cel",
  });
  const gamma = Math.log(90 / 100) + (17.62 * 8) / (243.12 + 8);
  const dew = (243.12 * gamma) / (17.62 - gamma);
  expect(dew).toBeCloseTo(6.46, 2);
  const { found, says } = told(session, "drn.damp-air", "car");
  expect(found.grade).toBe("minor");
  expect(says.some((one) => /^Floor above the dew point: −0\.\d+ ± \d/.test(one))).toBe(true);
  const working = workingOf(needsOf(session), "drn.dew_worked", "car");
  expect(working?.calls[0]?.given).toEqual(["Air temperature: 8 °C", "Relative humidity: 90 %"]);
  expect(working?.calls[0]?.source).toContain("WMO-No. 8");
  expect(working?.numbers).toMatch(/^Dew point \(8 °C; 90 %\) = 6\.\d ± \d/);
  const { measured } = { measured: session.assessment.readings.find((one) => one.point === "drn.dew_margin") };
  expect(measured?.value).toBeCloseTo(6 - dew, 9);
});

test("steering: 20 mm at a 350 mm wheel are 21.7 mm at 380 mm, over the 13 mm of a rack: major", () => {
  const session = judged({ "susp.wheel-lash@car": "20 mm" }, { steering: "rack", "steering-wheel": 350 });
  const { found, says } = told(session, "susp.lash", "car");
  expect(found.grade).toBe("major");
  // Rule read to 0.5 mm, erring by 0.5 mm, held with 2 mm.
  const around = (2 * Math.sqrt(0.5 ** 2 / 12 + (0.5 ** 2 + 2 ** 2) / 3) * 380) / 350;
  expect((20 * 380) / 350).toBeCloseTo(21.71, 2);
  expect(says).toContain(`Steering free play as on a 380 mm wheel: 21.7 ± ${around.toFixed(1)} mm`);
  expect(workingOf(needsOf(session), "susp.lash_scaled", "car")).toMatchObject({
    calls: [{ formula: "play · 380 / diameter", given: expect.arrayContaining([expect.stringMatching(/: 350 mm$/)]) }],
  });
});

test("a figure out of a function's range: the value is told as not worked out, never as a number", () => {
  const session = judged({ "susp.wheel-lash@car": "20 mm" }, { steering: "rack", "steering-wheel": 900 });
  const working = workingOf(needsOf(session), "susp.lash_scaled", "car");
  expect(working?.isKnown).toBe(false);
  expect(working?.result).toMatch(/^Cannot be worked out: .*900/);
  expect(working?.numbers).toBeUndefined();
  expect(plain(workedOver(needsOf(session), "susp.wheel-lash", "car")).map(({ id, result: says }) => [id, says])).toEqual([
    ["susp.lash_scaled", working?.result],
  ]);
});

test("where two replies differ the formula stands without numbers", () => {
  const said = replies(engine, { "corr.wall-ref@post-FL-fore": "2.00 mm", "corr.wall@post-FL-fore": "1.60 mm" });
  const other = replies(engine, { "corr.wall@post-FL-fore": "1.90 mm" }, "other");
  const session = start(engine, visit([...said, ...other], { sheets: built.map(({ sheet }) => sheet.id) }));
  const working = workingOf(needsOf(session), "corr.loss", "post-FL-fore");
  expect(working?.names).toBeDefined();
  expect(working?.numbers).toBeUndefined();
});
