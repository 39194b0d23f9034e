/**
 * Gates over all shipped sheets: on every occasion, each gate that stands before something asked there can be cleared by
 * what the sheets of that occasion ask of the person who usually looks. Judges no car.
 */
import { expect, test } from "vitest";
import { chosenSheets, USUALLY } from "../../src/app/state/new-visit.js";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { type PlanNode, replyOf } from "../../src/core/expr/plan.js";
import type { Gate, Point } from "../../src/core/sheet/run.js";
import type { Audience, Purpose } from "../../src/core/terms/index.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const { whole, sheets } = result.value;
const offered = sheets.map(({ sheet }) => ({ id: sheet.id, opensFor: sheet["opens-for"] }));

interface Occasion {
  readonly purpose: Purpose;
  readonly season: string;
  /** A sheet chosen by hand on top of those that open. */
  readonly byHand?: string;
}
const SEASONS = ["in-use", "put-away", "monthly-look", "wake-up"];
const occasions: readonly Occasion[] = [
  { purpose: "workshop", season: "in-use" },
  { purpose: "viewing", season: "in-use" },
  ...SEASONS.map((season) => ({ purpose: "season" as const, season })),
  ...offered
    .filter(({ opensFor }) => opensFor?.length === 0)
    .map(({ id }) => ({ purpose: "workshop" as const, season: "in-use", byHand: id })),
];

/** What a condition may still turn out to be. Nothing: it can never be known here. */
type May = ReadonlySet<boolean>;
const EITHER: May = new Set([true, false]);
const NEVER: May = new Set();
const only = (value: boolean): May => new Set([value]);

/** Points that can be answered here, and which season was said on the form. */
interface Ground {
  readonly asks: (point: string) => boolean;
  readonly season: string;
}

function may(node: PlanNode, ground: Ground): May {
  if (typeof node === "boolean") return only(node);
  if (typeof node !== "object") return EITHER;
  const [name, ...rest] = node as readonly [string, ...unknown[]];
  if (name === "!") return new Set([...may(rest[0] as PlanNode, ground)].map((value) => !value));
  if (name === "&&" || name === "||") {
    const parts = (rest[0] as readonly PlanNode[]).map((part) => may(part, ground));
    const whole = name === "&&";
    return new Set([
      ...(parts.every((part) => part.has(whole)) ? [whole] : []),
      ...(parts.some((part) => part.has(!whole)) ? [!whole] : []),
    ]);
  }
  if (name === "exists" || name === "all") return may(rest[1] as PlanNode, ground);
  return ofSeason(name, rest, ground.season) ?? (readsIn(node).every(ground.asks) ? EITHER : NEVER);
}

/** A comparison of the season with words is known from the form. */
function ofSeason(name: string, [left, right]: readonly unknown[], season: string): May | undefined {
  const isSeason = Array.isArray(left) && replyOf(left)?.point === "rest.season";
  if (!isSeason) return undefined;
  if (name === "==") return only(season === right);
  if (name === "!=") return only(season !== right);
  return name === "in" && Array.isArray(right) ? only(right.includes(season)) : undefined;
}

function readsIn(part: unknown): readonly string[] {
  if (!Array.isArray(part)) return [];
  const reply = replyOf(part);
  return reply === undefined ? part.flatMap(readsIn) : [reply.point];
}

/** The points behind a derived value, through others where it is made of such. */
const formulas = new Map(sheets.flatMap(({ built }) => built.sheet.derived.map((one) => [one.id, one] as const)));
const plansOf = new Map(sheets.map(({ built }) => [built.sheet.id, built.plans] as const));

function groundOf(points: ReadonlyMap<string, Point>, who: Audience, season: string): Ground {
  const asks = (name: string): boolean => {
    const point = points.get(name.replaceAll("_", "-")) ?? points.get(name);
    if (point !== undefined) return point.who.includes(who);
    const derived = formulas.get(name);
    if (derived === undefined) return false;
    if (derived.prefer !== undefined) return derived.prefer.some((one) => asks(one));
    const plan = plansOf.get(name.split(".")[0] ?? "")?.[`derived/${derived.id}/formula`];
    return plan !== undefined && readsIn(plan.code).every(asks);
  };
  return { asks, season };
}

/** What a look on this occasion opens, and whom it asks. */
function openedOn({ purpose, season, byHand }: Occasion) {
  const hand = byHand === undefined ? {} : { [byHand]: true };
  const chosen = chosenSheets(offered, { purpose, season, led: [], byHand: hand }).map(({ id }) => id);
  const open = sheets.filter(({ sheet }) => chosen.includes(sheet.id)).map(({ built }) => built);
  const points = new Map(open.flatMap(({ sheet }) => sheet.points.map((point) => [point.id, point] as const)));
  const who = USUALLY[purpose];
  return { open, points, who, name: [purpose, season, ...(byHand === undefined ? [] : [byHand])].join(" ") };
}

const states = new Map(whole.common.states.map((state) => [state.id, state] as const));

/** Whether anything asked of this person waits behind the gate. Hands and sparks it only warns of, once it is tripped. */
function standsBefore({ guards }: Gate, { points, who }: ReturnType<typeof openedOn>): boolean {
  if (guards === "touch" || guards === "spark") return false;
  if (guards === "drive-away") return true;
  const asked = [...points.values()].filter((point) => point.who.includes(who)).flatMap((point) => point.states);
  return asked.some((id) => id === guards || (guards === "lift" && states.get(id)?.lifted === true));
}

/**
 * A round of the season proves nothing for the road: that takes the wheels, the brakes and the suspension, whose sheets the
 * gate names. Who drives all the same says why.
 */
const NAMES_THE_SHEETS = new Map([
  ["gate.no-road", ["season in-use"]],
  ["gate.no-drive-away", SEASONS.map((season) => `season ${season}`)],
]);

const namesSheets = ({ set = [] }: Gate, { points }: ReturnType<typeof openedOn>): boolean =>
  set.some((name) => !points.has(name));

const all = occasions.map((occasion) => {
  const look = openedOn(occasion);
  const shared = whole.common.gates.map((gate) => [gate, whole.plans] as const);
  const own = look.open.flatMap(({ sheet, plans }) => sheet.gates.map((gate) => [gate, plans] as const));
  return { look, own, gates: [...shared, ...own], ground: groundOf(look.points, look.who, occasion.season) };
});

test("every gate can be cleared by what its occasion asks, or names the sheets that would", () => {
  const stuck = all.flatMap(({ look, gates, ground }) =>
    gates
      .filter(([gate]) => standsBefore(gate, look))
      .filter(([gate]) => !(NAMES_THE_SHEETS.get(gate.id)?.includes(look.name) === true && namesSheets(gate, look)))
      .flatMap(([gate, plans]) =>
        (gate.clears ?? []).flatMap((text, at) => {
          const plan = plans[`gates/${gate.id}/clears/${at}`];
          return plan !== undefined && may(plan.code, ground).has(true) ? [] : [`${look.name}, ${gate.id}: ${text}`];
        }),
      ),
  );
  expect(stuck).toEqual([]);
});

test("a sheet's own gate sends nobody to a sheet that need not be open", () => {
  const sent = all.flatMap(({ look, own }) =>
    own.flatMap(([{ id, set = [] }]) =>
      set.filter((name) => !look.points.has(name)).map((name) => `${look.name}, ${id}: ${name}`),
    ),
  );
  expect(sent).toEqual([]);
});

test("a stand-in asks no more than the point it stands in for, and of nobody else", () => {
  const everywhere = new Map(sheets.flatMap(({ built }) => built.sheet.points.map((one) => [one.id, one] as const)));
  const standIns = [...everywhere.values()].filter((point) => point["instead-of"] !== undefined);
  expect(standIns.map(({ id }) => id)).toEqual(expect.arrayContaining(["rest.up-pedal", "road.rt-throttle"]));
  for (const point of standIns) {
    const fuller = everywhere.get(point["instead-of"] ?? "");
    expect(fuller?.who, point.id).toEqual(expect.arrayContaining([...point.who]));
    expect(Object.keys(fuller?.fields ?? {}), point.id).toEqual(expect.arrayContaining(Object.keys(point.fields)));
  }
});
