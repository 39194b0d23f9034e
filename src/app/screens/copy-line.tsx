/** Quiet lines on the car list: one's own record has lain on this phone alone for a fortnight; papers that were to go. */
import { COPY_MADE, readCopyMade, type Summary } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { ASK_AFTER_DAYS, copyAge } from "../state/copy-age.js";
import { to } from "../state/routes.js";
import { t } from "../texts/files.js";
import { PapersDue } from "./papers-due.js";
import { useLoaded } from "./use-loaded.js";

export function CopyLine({ summaries }: { readonly summaries: readonly Summary[] }) {
  return (
    <>
      <PapersDue summaries={summaries} />
      <NoCopy summaries={summaries} />
    </>
  );
}

function NoCopy({ summaries }: { readonly summaries: readonly Summary[] }) {
  const { store, phone } = useApp();
  const kept = useLoaded(() => store.setting(COPY_MADE), COPY_MADE);
  if (!kept) return null;
  const age = copyAge(summaries, readCopyMade(kept.ok ? kept.value : undefined), phone.now());
  if (age.alone < ASK_AFTER_DAYS) return null;
  return (
    <ListRow
      title={age.days === undefined ? t("copy-line.never") : t("copy-line.title", { n: age.days })}
      second={t("copy-line.says")}
      href={to("files")}
    />
  );
}
