/** Draws random replies, facts and figures for a set of opened sheets, good and odd ones alike. */
import fc from "fast-check";
import type { AssessInput, Engine, StandingReply } from "../../src/core/assess/index.js";
import type { Field } from "../../src/core/sheet/run.js";
import { NON_ANSWERS, type ReplyValue } from "../../src/core/terms/index.js";

/** A value that fits a field; readings near and far from the edges, with and without a gauge. */
function valueFor(field: Field): fc.Arbitrary<ReplyValue> {
  if ("words" in field) {
    const one = fc.constantFrom(...field.words).map((word) => [word]);
    const several = fc.uniqueArray(fc.constantFrom(...field.words), { minLength: 1, maxLength: 3 });
    return (field.several === true ? several : one).map((words): ReplyValue => ({ type: "words", words }));
  }
  if ("quantity" in field) {
    const [from, to] = field.window;
    const near = fc.integer({ min: 0, max: 100 }).map((n) => (n / 100).toFixed(2));
    const far = fc.integer({ min: Math.ceil(from), max: Math.floor(to) }).map(String);
    const values = fc.array(fc.oneof(near, far), { minLength: 1, maxLength: field.shots ?? 2 });
    const gauge = fc.option(
      fc.record({ resolution: fc.constantFrom(0.01, 0.1), error: fc.constantFrom(0, 0.01, 0.1) }),
      { nil: undefined },
    );
    return fc.tuple(values, gauge).map(
      ([v, g]): ReplyValue => ({
        type: "reading",
        values: v,
        unit: field.unit,
        ...(g === undefined ? {} : { gauge: g }),
      }),
    );
  }
  if ("count" in field)
    return fc
      .integer({ min: field.count.from, max: field.count.to })
      .map((count): ReplyValue => ({ type: "count", count }));
  if ("yes" in field) return fc.boolean().map((yes): ReplyValue => ({ type: "yes", yes }));
  return fc.constant<ReplyValue>({ type: "date-code", text: "0823" });
}

/** One reply to any point of the opened sheets at any of its places; `known`: never a non-answer. */
export function anyReply(
  engine: Engine,
  places: (kind: string) => readonly string[],
  known = false,
): fc.Arbitrary<Omit<StandingReply, "id">> {
  const spots = engine.model.points.flatMap((p) => places(p.point.place).map((place) => ({ point: p, place })));
  return fc.constantFrom(...spots).chain(({ point, place }) =>
    fc.tuple(fc.constantFrom(...point.states), fc.constantFrom(...point.fields)).chain(([state, field]) => {
      const nonAnswer = fc.constantFrom(...NON_ANSWERS).map((n): ReplyValue => ({ type: "non-answer", nonAnswer: n }));
      const value = known
        ? valueFor(field.field)
        : fc.oneof({ arbitrary: valueFor(field.field), weight: 6 }, { arbitrary: nonAnswer, weight: 1 });
      return value.map((v) => ({
        key: { point: point.id, place, state, field: v.type === "non-answer" ? "*" : field.name },
        value: v,
      }));
    }),
  );
}

/** One change to a visit. */
export type Edit =
  | { readonly kind: "reply"; readonly reply: Omit<StandingReply, "id">; readonly beside: boolean }
  | { readonly kind: "earlier"; readonly reply: Omit<StandingReply, "id">; readonly at: string; readonly km: number }
  | { readonly kind: "odometer"; readonly km: number }
  | { readonly kind: "take-back"; readonly at: number }
  | { readonly kind: "fact"; readonly name: string; readonly value: string | boolean | undefined }
  | {
      readonly kind: "figure";
      readonly limit: string;
      readonly value: string | undefined;
      readonly place: string | undefined;
    }
  | { readonly kind: "who"; readonly who: AssessInput["who"] };

export function anyEdit(engine: Engine, places: (kind: string) => readonly string[]): fc.Arbitrary<Edit> {
  const facts = engine.model.common.facts.filter((f) => f.kind === "word" || f.kind === "yes");
  const fact = fc.constantFrom(...facts).chain((f) => {
    const value: fc.Arbitrary<string | boolean> = f.kind === "yes" ? fc.boolean() : fc.constantFrom(...(f.words ?? []));
    return fc.option(value, { nil: undefined }).map((v): Edit => ({ kind: "fact", name: f.id, value: v }));
  });
  const km = fc.constantFrom(40_000, 44_000, 52_000);
  const lengths = engine.model.limits.filter((l) => l.limit.unit === "mm");
  const figure = fc
    .tuple(
      fc.constantFrom(...lengths),
      fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
      fc.option(fc.constantFrom("FR", "axle-F", "car"), { nil: undefined }),
    )
    .map(
      ([l, v, place]): Edit => ({
        kind: "figure",
        limit: l.limit.id,
        value: v === undefined ? undefined : (v / 100).toFixed(2),
        place,
      }),
    );
  return fc.oneof(
    {
      arbitrary: fc
        .tuple(anyReply(engine, places), fc.boolean())
        .map(([reply, beside]): Edit => ({ kind: "reply", reply, beside })),
      weight: 12,
    },
    {
      arbitrary: fc
        .tuple(anyReply(engine, places), fc.constantFrom("2023-05-01", "2024-05-01", "2025-05-01"), km)
        .map(([reply, at, at_]): Edit => ({ kind: "earlier", reply, at, km: at_ })),
      weight: 5,
    },
    { arbitrary: km.map((at): Edit => ({ kind: "odometer", km: at })), weight: 1 },
    { arbitrary: fc.nat(200).map((at): Edit => ({ kind: "take-back", at })), weight: 3 },
    { arbitrary: fact, weight: 2 },
    { arbitrary: figure, weight: 3 },
    {
      arbitrary: fc.constantFrom("technician", "buyer", "owner").map((who): Edit => ({ kind: "who", who })),
      weight: 1,
    },
  );
}

/** The visit after an edit. `beside`: the new reply does not replace the one that stands. */
export function edited(input: AssessInput, edit: Edit, n: number): AssessInput {
  switch (edit.kind) {
    case "reply": {
      const same = (r: StandingReply) => JSON.stringify(r.key) === JSON.stringify(edit.reply.key);
      const rest = edit.beside ? input.replies : input.replies.filter((r) => !same(r));
      return { ...input, replies: [...rest, { ...edit.reply, id: `r${n}` }] };
    }
    case "earlier":
      return {
        ...input,
        earlier: [
          ...input.earlier,
          { at: edit.at, odometer: { value: edit.km, unit: "km" }, replies: [{ ...edit.reply, id: `e${n}` }] },
        ],
      };
    case "odometer":
      return { ...input, odometer: { value: edit.km, unit: "km" } };
    case "take-back":
      return { ...input, replies: input.replies.filter((_, i) => i !== edit.at % Math.max(1, input.replies.length)) };
    case "fact": {
      const { [edit.name]: _, ...facts } = input.car.facts;
      return {
        ...input,
        car: { ...input.car, facts: edit.value === undefined ? facts : { ...facts, [edit.name]: edit.value } },
      };
    }
    case "figure": {
      const rest = input.car.limits.filter((l) => l.limit !== edit.limit);
      const figure =
        edit.value === undefined
          ? []
          : [
              {
                limit: edit.limit,
                value: edit.value,
                unit: "mm",
                basis: "maker" as const,
                ...(edit.place === undefined ? {} : { place: edit.place }),
              },
            ];
      return { ...input, car: { ...input.car, limits: [...rest, ...figure] } };
    }
    case "who":
      return { ...input, who: edit.who };
  }
}
