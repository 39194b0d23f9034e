/** Complaints as spoken, each with the points it puts first: pressed, they open the round there. Answers none of them. */
import { type ComponentChildren, Fragment } from "preact";
import { ListRow } from "../parts/list-row.js";
import type { ComplaintLine } from "../state/complaint-lines.js";
import { to } from "../state/routes.js";
import { t } from "../texts/index.js";

export function ComplaintRows({
  lines,
  visit,
  after,
}: {
  readonly lines: readonly ComplaintLine[];
  /** The visit in addresses. */
  readonly visit: string;
  /** What stands under a complaint: its answer. */
  readonly after?: (id: string) => ComponentChildren;
}) {
  return (
    <>
      {lines.map((line) => (
        <Fragment key={line.id}>
          <ListRow title={line.text} second={line.second} />
          {line.first.map((row) => (
            <ListRow
              key={row.id}
              folded
              title={t("complaint.first", { point: row.title })}
              aside={row.places}
              href={row.href}
            />
          ))}
          {line.more > 0 && (
            <ListRow folded title={t("complaint.more", { n: line.more })} href={to("where", { visit })} />
          )}
          {after?.(line.id)}
        </Fragment>
      ))}
    </>
  );
}
