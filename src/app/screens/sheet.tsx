/** What a check sheet holds: its points with their questions, its limits with their basis, its work. */
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import type { FrozenSheetFile } from "../state/frozen.js";
import { questionOf } from "../state/knowledge.js";
import { bandsText, limitTitle } from "../state/limits-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { textsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { Plain } from "./frame.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { useLoaded } from "./use-loaded.js";
import { useSheetsAtHand } from "./use-sheets.js";

const NotYet = lazy(() => import("./sheet-own.js").then((file) => file.NotYet));
const SheetOwn = lazy(() => import("./sheet-own.js").then((file) => file.SheetOwn), Nothing);

/** Characters of an edition shown. */
const EDITION_SHOWN = 12;

function Contents({ file }: { readonly file: FrozenSheetFile }) {
  const texts = textsOf(file);
  return (
    <>
      <Band heading={t("sheet.points")} aside={String(file.sheet.points.length)}>
        {file.sheet.points.map((point) => {
          const text = texts.points[point.id];
          return (
            <ListRow
              key={point.id}
              title={text?.name ?? point.id}
              second={text && questionOf(text, "technician")}
              aside={point["safety-critical"] ? t("sheet.safety") : undefined}
            />
          );
        })}
      </Band>
      <Band heading={t("sheet.limits")}>
        {file.sheet.limits.map((limit) => (
          <ListRow
            key={limit.id}
            title={limitTitle(limit, texts)}
            second={`${bandsText(limit, limit.bands)}. ${t(`basis.${limit.basis}`)}. ${limit.source}`}
          />
        ))}
      </Band>
      <Band heading={t("sheet.jobs")}>
        {file.sheet.jobs.map((job) => (
          <ListRow key={job.id} title={texts.jobs[job.id]?.name ?? job.id} second={texts.jobs[job.id]?.does} />
        ))}
      </Band>
    </>
  );
}

export function SheetScreen({ params }: { readonly params: ParamsOf<"sheet"> }) {
  const { journal } = useApp();
  const house = journal.house().value;
  const sheet = useSheetsAtHand().find((one) => one.id === params.sheet);
  const read = useLoaded(async () => sheet?.file(), `${params.sheet} ${sheet?.edition ?? ""}`);
  if (!sheet) return house.is === "opening" ? <OpeningScreen /> : <NotYet sheet={params.sheet} />;
  if (!read) return <OpeningScreen />;
  const about = read.ok ? textsOf(read.value).about : "";
  return (
    <Plain
      back={t("sheets.title")}
      href={to("sheets")}
      title={sheet.title}
      second={t("sheet.edition", { edition: sheet.edition.slice(0, EDITION_SHOWN) })}
    >
      {about !== "" && <p class="remark">{about}</p>}
      {read.ok ? (
        <Contents file={read.value} />
      ) : (
        <Notice kind="error" title={read.problems.map(problemText).join(" ")} />
      )}
      {read.ok && <SheetOwn sheet={sheet} file={read.value} />}
    </Plain>
  );
}
