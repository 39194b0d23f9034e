/** What reading a file in would bring, counted before anything is changed. */
import type { CopyManifest, DryRun } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { day, t } from "../texts/files.js";
import { lazy, Nothing } from "./lazy.js";

const Lacking = lazy(() => import("./lacking.js").then((file) => file.Lacking), Nothing);

const ROWS = ["cars", "visits", "entries", "blobs"] as const;
const SAID = ["forks", "altered"] as const;

export function Brings({ manifest, brings }: { readonly manifest: CopyManifest; readonly brings: DryRun }) {
  const { holds, made, volume, of, elsewhere, keptBack, lacking = [] } = manifest;
  const entries = { fresh: brings.added, known: brings.known };
  const nothing = brings.added === 0 && brings.erasedHere === 0 && brings.blobs.fresh === 0;
  const erased = brings.erased - brings.erasedHere;
  return (
    <>
      <Notice
        kind="plain"
        title={t(`read.holds.${holds}`, { when: day(Date.parse(made)) })}
        says={[of > 1 ? `${t("read.part", { part: volume, of })}.` : "", nothing ? t("read.nothing-new") : ""]
          .join(" ")
          .trim()}
      />
      {brings.names.map(({ name, fresh }, index) => (
        <ListRow key={`${index} ${name}`} title={name} aside={fresh ? t("read.new") : t("read.known")} />
      ))}
      {ROWS.map((row) => {
        const { fresh, known } = row === "entries" ? entries : brings[row];
        return <ListRow key={row} folded title={t(`read.row.${row}`)} aside={t("read.row", { fresh, known })} />;
      })}
      {SAID.map(
        (one) =>
          brings[one] > 0 && (
            <p key={one} class="remark">
              {t(`read.${one}`, { n: brings[one] })}
            </p>
          ),
      )}
      {erased > 0 && <p class="remark">{t("read.erased", { n: erased })}</p>}
      {brings.erasedHere > 0 && <p class="remark">{t("read.erases-here", { n: brings.erasedHere })}</p>}
      {brings.unknown > 0 && <p class="remark">{t("read.unknown", { n: brings.unknown })}</p>}
      {elsewhere > 0 && <p class="remark">{t("read.elsewhere", { n: elsewhere })}</p>}
      {lacking.length > 0 && <Lacking lacking={lacking} title={t("read.lacking", { n: lacking.length })} />}
      {keptBack > 0 && <p class="remark">{t("read.kept-back", { n: keptBack })}</p>}
      {brings.blank && <p class="remark">{t("read.blank")}</p>}
    </>
  );
}
