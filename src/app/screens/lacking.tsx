/** What a copy names and does not hold: how many, and on pressing which ones, of which visit. */
import type { LackingBlob } from "../../core/record/index.js";
import { Disclosure } from "../parts/disclosure.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { calendarDay, day, t } from "../texts/files.js";

export function Lacking({ lacking, title }: { readonly lacking: readonly LackingBlob[]; readonly title: string }) {
  return (
    <>
      <Notice kind="plain" title={title} />
      <Disclosure
        class="row"
        inside={() =>
          lacking.map(({ hash, of, on, what, name, at, why }) => {
            const plain = t(`files.lacking.${what}`);
            return (
              <ListRow
                key={hash}
                folded
                title={name === "" ? plain : t("files.lacking.named", { what: plain, name })}
                second={t(`files.lacking.${why}`, {
                  of: on === undefined ? of : `${of}, ${calendarDay(on)}`,
                  when: day(Date.parse(at)),
                })}
              />
            );
          })
        }
      >
        {t("files.lacking.all")}
      </Disclosure>
    </>
  );
}
