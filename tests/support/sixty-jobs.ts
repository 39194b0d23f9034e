/**
 * A car with sixty jobs due and more: of every row of replies the second, at two places of every kind. Read off the
 * sheets, so that it goes on firing their rules as they grow; invents no finding.
 */
import { FACTS } from "../../src/app/demo/car.js";
import { DEMO_SHEETS } from "../../src/app/demo/scenario.js";
import { withExamples } from "../../src/app/state/example-house.js";
import { layWork, workInput } from "../../src/app/state/plan-input.js";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { assess, prepare, type StandingReply } from "../../src/core/assess/index.js";
import { order, type WorkInput } from "../../src/core/plan/index.js";
import { foldHouse, foldPlan } from "../../src/core/record/index.js";
import { buildPlaces } from "../../src/core/sheet/run.js";
import { TRADE_WORK } from "../../src/core/trade/index.js";
import { visit } from "./small-car.js";

export type SaidOfWorn = Omit<StandingReply, "id">;

const PLACES_OF_A_KIND = 2;
/** With tax, minor units: what cannot wait and a part of the rest. */
export const SIXTY_BUDGET = 1_150_000;
/** A Monday. */
const TODAY = "2026-11-23";

export interface SixtyJobs {
  readonly replies: readonly SaidOfWorn[];
  /** As planning is given it, with the example rates and days. */
  readonly input: WorkInput;
}

/** The replies, and the work they make due. */
export async function sixtyJobs(): Promise<SixtyJobs> {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error("the sheets do not load");
  const { common, sheets } = result.value;
  const built = sheets.map((one) => one.built).filter(({ sheet }) => DEMO_SHEETS.includes(sheet.id));
  const engine = prepare(common, built, TRADE_WORK);
  const { tree } = buildPlaces(common.common.places);
  const replies = engine.model.points.flatMap(({ id, states, point, fields }) => {
    const places = tree.ofKind(point.place).slice(0, PLACES_OF_A_KIND);
    return places.flatMap((place) =>
      fields.flatMap(({ name, field }): readonly SaidOfWorn[] => {
        const word = "words" in field ? field.words[1] : undefined;
        const [state] = states;
        if (word === undefined || state === undefined) return [];
        return [{ key: { point: id, place, state, field: name }, value: { type: "words", words: [word] } }];
      }),
    );
  });
  const judged = assess(
    engine,
    visit(
      replies.map((one, n) => ({ ...one, id: `said${n}` })),
      { sheets: [...DEMO_SHEETS], car: { facts: FACTS, limits: [] } },
    ),
  );
  const jobs = order(judged, built, { at: TODAY, exposure: 0, around: tree.around });
  const known = {
    jobs: new Map(built.flatMap(({ sheet }) => sheet.jobs.map((job) => [job.id, { job }] as const))),
    common: common.common,
  };
  const laid = layWork({ known, tree, jobs, orders: judged.orders });
  const house = withExamples(foldHouse([]));
  return { replies, input: { ...workInput(laid, {}, foldPlan([]), house, TODAY), budget: SIXTY_BUDGET } };
}
