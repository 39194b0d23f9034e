/** When to look again, as a hand-over takes it, in the words of who reads. Pure; core/report leaves out what is told twice. */
import type { LookTold } from "../../core/report/index.js";
import type { Audience } from "../../core/terms/index.js";
import { t } from "../texts/looks.js";
import { capital } from "./knowledge.js";
import type { LooksNow } from "./looks-ground.js";
import { lookNamed, wayIn } from "./looks-words.js";
import { checkDate } from "./rechecks-in.js";

/**
 * By use the earliest day it may come to: never later than anybody knows. Checks of the visit handed over stand among its
 * days by themselves, by `date`.
 */
export const looksTold = ({ visits, about, unit }: LooksNow, who: Audience, visit: string): readonly LookTold[] =>
  visits.map(({ id, looks, at, after, day, by, stands }) => ({
    id,
    ...(day === undefined ? {} : { on: day }),
    ...(day === undefined || day === by ? {} : { isByUse: true as const }),
    ...(stands === "overdue" ? { isOverdue: true as const } : {}),
    ...(at === undefined ? {} : { odometer: { value: wayIn(at, unit), unit } }),
    ...(at !== undefined || after === undefined ? {} : { distance: { value: wayIn(after.km, unit), unit } }),
    of: looks.flatMap((look) => {
      const of = about.get(look.id);
      if (!of) return [];
      const { title, where } = lookNamed(of, look, who);
      return [
        {
          is: look.is,
          title: look.is === "job" ? capital(t("looks.after-job", { job: title })) : title,
          where,
          ...(of.check !== undefined && of.visit === visit ? { date: checkDate(of.check) } : {}),
          ...(of.fault ? { fault: { fault: of.fault.fault, place: of.fault.place } } : {}),
        },
      ];
    }),
  }));
