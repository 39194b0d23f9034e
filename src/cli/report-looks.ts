/**
 * When to look again, as far as a visit file tells: what was found and stays as it is, by the sheets' own figures. What
 * was done, decided or wears is in no such file. Judges nothing.
 */
import type { AssessInput, Assessment } from "../core/assess/index.js";
import {
  type CarUse,
  type KmOn,
  type LookWanted,
  looksAgain,
  type OrderSetting,
  order,
  paceOf,
  rowsForFault,
  urgentFaults,
} from "../core/plan/index.js";
import type { HandoverInput, LookTold } from "../core/report/index.js";
import { convert } from "../core/units/index.js";

type Unit = "km" | "[mi_i]";
const unitOf = (odometer: AssessInput["odometer"]): Unit => (odometer?.unit === "[mi_i]" ? "[mi_i]" : "km");
const kmOf = (odometer: AssessInput["odometer"]): number | undefined =>
  odometer && Math.round(convert(odometer.value, unitOf(odometer), "km", "distance"));

/** First due class with a time to it (PL5): what is more urgent is mended, not looked at. */
const LATER = 2;

/** Each visit and what its odometer showed, where somebody read it. */
const readIn = (visits: readonly Pick<AssessInput, "at" | "odometer">[]): readonly KmOn[] =>
  visits.flatMap(({ at, odometer }) => {
    const km = kmOf(odometer);
    return km === undefined ? [] : [{ on: at.slice(0, 10), km }];
  });

/** Looks as the hand-over takes them; `faults` are its findings, in the words of who reads. */
export function looksIn(
  input: Pick<AssessInput, "at" | "odometer" | "earlier">,
  assessment: Assessment,
  sheets: Parameters<typeof order>[1],
  setting: OrderSetting,
  { faults }: Pick<HandoverInput, "faults">,
): readonly LookTold[] {
  const [on, unit] = [input.at.slice(0, 10), unitOf(input.odometer)];
  const [here] = readIn([input]);
  const pace = paceOf(readIn([...input.earlier, input]));
  const use: CarUse = { today: on, since: on, ...(here ? { odometer: here } : {}), ...(pace ? { pace } : {}) };
  const due = order(assessment, sheets, setting);
  const wanted = urgentFaults(assessment.faults, sheets, setting).flatMap(
    ({ fault, byWhen }): readonly LookWanted[] => {
      const rows = rowsForFault(fault, sheets);
      const isListed =
        rows.length === 0 &&
        due.some((job) => job.faults.some((one) => one.fault === fault.fault && one.place === fault.place));
      if (byWhen.class < LATER || isListed) return [];
      const id = `finding ${fault.fault}@${fault.place}`;
      const from = { on, ...(here ? { km: here.km } : {}) };
      return [{ id, is: "finding", of: fault.fault, place: fault.place, grade: fault.grade, from, rows, points: [] }];
    },
  );
  const way = (km: number) => ({ value: Math.round(convert(km, "km", unit, "distance")), unit });
  return looksAgain(wanted, use).visits.map(
    ({ id, looks, at, after, day, by, stands }): LookTold => ({
      id,
      ...(day === undefined ? {} : { on: day }),
      ...(day === undefined || day === by ? {} : { isByUse: true }),
      ...(stands === "overdue" ? { isOverdue: true } : {}),
      ...(at === undefined ? {} : { odometer: way(at) }),
      ...(at !== undefined || after === undefined ? {} : { distance: way(after.km) }),
      of: looks.flatMap((look) =>
        faults
          .filter(({ fault, place }) => fault === look.of && place === look.place)
          .map(({ title, where, fault, place }) => ({ is: look.is, title, where, fault: { fault, place } })),
      ),
    }),
  );
}
