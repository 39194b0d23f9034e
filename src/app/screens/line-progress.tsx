/** Pictures on their way into the record: how far, and leaving one out. Shows nothing when there are none. */
import { ListRow } from "../parts/list-row.js";
import type { PictureLine } from "../state/picture-line.js";
import { t } from "../texts/media.js";

/** Rows drawn of those that wait; the rest is in the count. */
const SHOWN = 4;

export function LineProgress({ line }: { readonly line: PictureLine }) {
  const { waiting, done, all } = line.now.value;
  const isGoing = waiting.some(({ is }) => is !== "unread");
  return (
    <div class="line">
      <p role="status" class="remark">
        {isGoing ? t("line.progress", { n: done + 1, all }) : ""}
      </p>
      {waiting.slice(0, SHOWN).map((one) => (
        <ListRow
          key={one.id}
          folded
          title={one.name === "" ? t("line.shot") : one.name}
          {...(one.is === "unread" ? { second: t("line.unread") } : {})}
          aside={t("line.leave-out")}
          onPress={() => line.leaveOut(one.id)}
        />
      ))}
    </div>
  );
}
