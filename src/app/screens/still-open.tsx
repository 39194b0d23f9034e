/** What the last visit left open on a car: complaints as spoken, then findings from the worst. */
import { openComplaints } from "../../core/plan/index.js";
import { GradeMark } from "../parts/grade-mark.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { worstFirst } from "../state/because.js";
import { openFaults } from "../state/car-view.js";
import { deskOf } from "../state/desks.js";
import { faultSecond } from "../state/findings-view.js";
import { heardIn } from "../state/heard.js";
import { faultSays } from "../state/knowledge.js";
import { paramOf, to } from "../state/routes.js";
import { wayOf } from "../state/way.js";
import { t } from "../texts/index.js";
import { t as viewing } from "../texts/viewing.js";
import { lazy, Nothing } from "./lazy.js";
import { WorstCaution } from "./worst-caution.js";

const CarLooks = lazy(() => import("./looks-car.js").then((file) => file.CarLooks), Nothing);

/** Findings shown here, the worst; their own screen has them all. */
const SHOWN = 5;

export function StillOpen({ visit }: { readonly visit: string }) {
  const app = useApp();
  const laid = deskOf(app, visit);
  const opened = laid.visit.value;
  const car = laid.car.value;
  const [known, assessment] = [laid.known.value, laid.assessment.value];
  const state = opened.is === "open" ? opened.state : undefined;
  // While the plans with their answers are being read, nothing is said to be unanswered.
  const heard = state && heardIn(app.journal, state, laid.earlier.value);
  const complaints = openComplaints(heard ?? []);
  // Of a viewing still going on, with the seller beside it, the car's page tells nothing either.
  const covered = state !== undefined && !state.closed && wayOf(app.remembered, state).quiet;
  const faults = covered ? [] : worstFirst(openFaults(assessment));
  const who = state?.opened?.value.who ?? "technician";
  return (
    <>
      {known && state && assessment && !covered && (
        <WorstCaution known={known} due={assessment.cautions} told={state.told} visit={paramOf(visit)} />
      )}
      <Band heading={t("car.open")}>
        {complaints.map((one) => (
          <ListRow
            key={one.id}
            lead={null}
            title={`“${one.text}”`}
            second={t("car.complaint")}
            href={to("visit", { visit: paramOf(visit) })}
          />
        ))}
        {known &&
          faults
            .slice(0, SHOWN)
            .map((fault) => (
              <ListRow
                key={`${fault.fault}@${fault.place}`}
                lead={<GradeMark mark={fault.grade} label={t(`mark.${fault.grade}`)} />}
                title={faultSays(known, fault.fault, fault.rules, who).says}
                second={faultSecond({ known }, fault)}
                href={to("finding", { visit: paramOf(visit), fault: fault.fault, place: fault.place })}
              />
            ))}
        {faults.length > SHOWN && (
          <ListRow
            lead={null}
            title={t("car.open.more", { n: faults.length })}
            href={to("findings", { visit: paramOf(visit) })}
          />
        )}
        {covered && <ListRow title={viewing("viewing.covered")} href={to("findings", { visit: paramOf(visit) })} />}
        {heard && complaints.length === 0 && faults.length === 0 && assessment && !covered && (
          <p class="remark">{t("car.open.none")}</p>
        )}
      </Band>
      {car?.is === "open" && !covered && <CarLooks car={car.state} who={who} />}
    </>
  );
}
