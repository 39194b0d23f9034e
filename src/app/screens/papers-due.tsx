/** Lines on the car list for viewings whose other people's papers were to go by now. */
import type { Summary } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { dayPapersGo, isDue, personalPapers } from "../state/personal-papers.js";
import { paramOf, to } from "../state/routes.js";
import { dayOf } from "../state/today.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/viewing-page.js";

export function PapersDue({ summaries }: { readonly summaries: readonly Summary[] }) {
  const viewings = summaries.filter((one) => one.of === "visit" && one.purpose === "viewing" && !one.demo);
  return (
    <>
      {viewings.map(({ stream }) => (
        <DueLine key={stream} visit={stream} />
      ))}
    </>
  );
}

/** The visit itself is read only where its plan says that the day has come. */
function DueLine({ visit }: { readonly visit: string }) {
  const { journal, phone } = useApp();
  const plan = journal.keptPlan(visit).value;
  const today = dayOf(phone.now());
  if (plan.is !== "open" || !isDue(plan.state, today)) return null;
  return <Due visit={visit} since={dayPapersGo(plan.state) ?? today} />;
}

function Due({ visit, since }: { readonly visit: string; readonly since: string }) {
  const read = useApp().journal.keptVisit(visit).value;
  const n = read.is === "open" ? personalPapers(read.state).length : 0;
  if (n === 0) return null;
  return (
    <ListRow
      title={t("papers.due.title", { n })}
      second={t("papers.due.says", { on: plainDay(since) })}
      href={to("viewing", { visit: paramOf(visit) })}
    />
  );
}
