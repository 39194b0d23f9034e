// HO10, HO14, HO26, HO40: whatever a visit holds, every form says the same, and nothing unseen ends in a good word.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type DoneTold,
  type FaultTold,
  factsOf,
  type HandoverInput,
  handover,
  handoverPages,
  missingFacts,
  toHtml,
  toText,
} from "../../src/core/report/index.js";
import { AUDIENCES, GRADES, SURENESS } from "../../src/core/terms/index.js";
import { fault, job, LIMIT, soundVisit, WORDS } from "../support/handover-visit.js";

const said = fc.string({ unit: "grapheme", minLength: 1, maxLength: 30 }).map((text) => `x${text}`);
const place = fc.constantFrom("FL", "FR", "RL", "RR", "car");
const date = fc.constantFrom("2031-06-01", "2032-02-29", "2033-12-31");
const three = fc.tuple(fc.nat(9999), fc.nat(9999), fc.nat(9999)).map(([a, b, c]) => [a, a + b, a + b + c] as const);

const faults = fc.uniqueArray(
  fc.record({
    place,
    title: said,
    where: said,
    grade: fc.constantFrom(...GRADES),
    sure: fc.constantFrom(...SURENESS),
    close: fc.boolean(),
    provisional: fc.boolean(),
    mustStand: fc.boolean(),
    consequence: fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const),
    words: said,
    mended: fc.option(fc.record({ on: date, checked: fc.boolean() }), { nil: undefined }),
  }),
  { selector: ({ place: at }) => at, maxLength: 4 },
);
const visit = fc
  .record({
    for: fc.constantFrom(...AUDIENCES),
    found: faults,
    unseen: fc.array(fc.record({ title: said, where: said }), { maxLength: 3 }),
    complaints: fc.array(said, { maxLength: 2 }),
    finished: fc.uniqueArray(
      fc.record({
        id: fc.constantFrom("j7", "j8", "j9"),
        title: said,
        where: said,
        on: date,
        by: fc.option(said, { nil: undefined }),
        before: said,
        after: fc.option(said, { nil: undefined }),
        unseen: fc.array(said, { maxLength: 2 }),
        needed: fc.boolean(),
        is: fc.constantFrom("other" as const, "same" as const, "none" as const),
        who: said,
      }),
      { selector: ({ id }) => id, maxLength: 3 },
    ),
    left: fc.array(said, { maxLength: 2 }),
    unread: fc.boolean(),
    value: fc.double({ min: -50, max: 50, noNaN: true }),
    work: fc.array(fc.record({ title: said, minutes: three, cost: three, due: date, no: fc.boolean(), why: said }), {
      maxLength: 3,
    }),
  })
  .map(
    (of): HandoverInput =>
      soundVisit({
        for: of.for,
        faults: of.found.map(
          ({ words, ...one }): FaultTold =>
            fault({
              ...one,
              because: [
                { is: "seen", words },
                { is: "limit", ...LIMIT, value: of.value, uncertainty: 0.1 },
              ],
            }),
        ),
        notSeen: of.unseen.map((one, at) => ({
          ...one,
          point: `p${at}`,
          place: "car",
          state: "cold",
          is: "not-looked",
        })),
        complaints: of.complaints.map((words, at) => ({ id: `c${at}`, words })),
        readings: [
          {
            point: "p",
            place: "FL",
            title: "Play",
            where: "front left",
            typed: [],
            value: of.value,
            uncertainty: 0.1,
            unit: "mm",
            limits: [{ ...LIMIT, state: "past", applies: "not known" }],
          },
        ],
        jobs: of.work.map(({ title, minutes, cost, due, no, why }, at) =>
          job({
            id: `j${at}`,
            title,
            minutes,
            cost,
            faults: [],
            byWhen: { class: 3, date: due },
            ...(no ? { decision: { is: "no", reason: why } } : {}),
          }),
        ),
        done: of.finished.map(
          ({ before, after, needed, is, who, ...one }): DoneTold => ({
            ...one,
            readings: [
              {
                title: one.title,
                where: one.where,
                before: { says: before, on: "2030-01-02" },
                ...(after === undefined ? {} : { after: { says: after, on: one.on } }),
              },
            ],
            look: { needed, is, who: is === "none" ? [] : [who] },
          }),
        ),
        picturesLeft: of.left,
        isProgressUnread: of.unread,
        visitsUnread: of.unread ? 2 : 0,
        money: { currency: "EUR", minorDigits: 2, missing: 0 },
      }),
  );

const SIGNS: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'" };
const readOff = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&(?:amp|lt|gt|quot|#39);/g, (sign) => SIGNS[sign] ?? sign);

test("HO40 the page and the text carry every fact of any visit", () => {
  fc.assert(
    fc.property(visit, (input) => {
      const model = handover(input);
      const pages = handoverPages(model, WORDS);
      const facts = factsOf(model, WORDS);
      expect(missingFacts(facts, readOff(toHtml(pages, WORDS)))).toEqual([]);
      expect(missingFacts(facts, toText(pages, WORDS))).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

test("HO10 the best verdict needs everything seen, nothing close, nothing above minor and every complaint answered", () => {
  fc.assert(
    fc.property(visit, (input) => {
      const { verdict, looked } = handover(input).first;
      const standing = input.faults.filter(({ mended }) => mended?.checked !== true);
      const isGrave = ({ grade, close, mustStand, provisional, mended }: FaultTold): boolean =>
        grade === "major" || grade === "dangerous" || close || mustStand || provisional || mended !== undefined;
      const isUnlooked = (input.done ?? []).some(
        ({ look, unseen }) => (look.needed && look.is === "none") || unseen.length > 0,
      );
      const isBest =
        !standing.some(isGrave) &&
        !isUnlooked &&
        input.isProgressUnread !== true &&
        input.notSeen.length === 0 &&
        input.complaints.length === 0;
      expect(verdict.is === "nothing-against").toBe(isBest);
      expect(looked.sound).toBe(input.looked.sound);
      expect(verdict.owner === "dont-drive").toBe(verdict.is === "do-not-drive");
    }),
    { numRuns: 200 },
  );
});
