/**
 * The rules of what stands (SPEC.md RC14–RC30), written down a second time as plainly and slowly as they read. Only
 * for comparing: shares nothing with the fold but the shape of entries.
 */
import type { Bodies, Entry, Logged } from "../../src/core/record/index.js";

const nameOf = (one: Logged): string => [one.stream, one.writer, one.seq, one.nonce].join("/");
const isBody = (one: Logged): one is Entry => "body" in one;

/** `field key` → ids standing there, both sorted, of one visit's log without rings. */
export function modelReplies(log: readonly Logged[]): Readonly<Record<string, readonly string[]>> {
  const byName = new Map(log.map((one) => [nameOf(one), one]));
  const of = <K extends keyof Bodies>(kind: K): readonly (readonly [string, Bodies[K]])[] =>
    [...byName].flatMap(([name, one]) =>
      isBody(one) && one.kind === kind && one.v === 1 ? [[name, one.body as Bodies[K]] as const] : [],
    );

  const remembered = new Map<string, string[]>();
  for (const [name, one] of byName) if (!isBody(one)) remembered.set(name, []);
  for (const [, { of: named }] of of("erase")) {
    for (const { id, replaced = [] } of named) {
      const target = byName.get(id);
      if (target && isBody(target) && target.kind === "erase") continue;
      remembered.set(id, [...(remembered.get(id) ?? []), ...replaced]);
    }
  }
  const undos = of("undo").filter(([name]) => !remembered.has(name));
  const undosOf = new Map<string, string[]>();
  for (const [undo, body] of undos) for (const id of body.of) undosOf.set(id, [...(undosOf.get(id) ?? []), undo]);
  const isLive = (name: string): boolean => !(undosOf.get(name) ?? []).some(isLive);
  const slots = new Map<string, Map<string, Bodies["reply"]>>();
  for (const [name, body] of of("reply")) {
    if (remembered.has(name)) continue;
    const base = `${body.key.point}@${body.key.place}#${body.key.state}`;
    slots.set(base, (slots.get(base) ?? new Map<string, Bodies["reply"]>()).set(name, body));
  }

  const result: Record<string, string[]> = {};
  for (const [base, replies] of slots) {
    const replaced = new Set<string>();
    const follow = (over: string): void => {
      for (const id of remembered.get(over) ?? replies.get(over)?.replaces ?? []) {
        if (replaced.has(id) || !(replies.has(id) || remembered.has(id))) continue;
        replaced.add(id);
        follow(id);
      }
    };
    for (const name of [...replies.keys(), ...remembered.keys()]) if (isLive(name)) follow(name);
    for (const [name, { key, value }] of replies) {
      if (value === null || replaced.has(name) || !isLive(name)) continue;
      result[`${base}.${key.field}`] = [...(result[`${base}.${key.field}`] ?? []), name].sort();
    }
  }
  return result;
}
