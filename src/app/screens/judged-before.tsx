/** What was judged again so far, each with what became of its findings; the last can be taken back. */
import type { Bodies, Stands } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { personName } from "../state/history-view.js";
import { judgementsOf } from "../state/judge-again.js";
import { type ChangeLines, changeLines } from "../state/judge-again-view.js";
import { undo } from "../state/reply-acts.js";
import { clock, day, t } from "../texts/index.js";
import { ChangeRow, HEAPS, noneOf } from "./judge-again-lines.js";
import type { OnDesk } from "./on-visit.js";
import { useLoaded } from "./use-loaded.js";

/** Changes kept already, under the heading of their act: each row says by itself what became of it. */
function Changes({ lines }: { readonly lines: ChangeLines }) {
  if (noneOf(lines)) return <p class="remark">{t("again.none")}</p>;
  return (
    <>
      {HEAPS.flatMap((heap) =>
        lines[heap].map((line) => <ChangeRow key={line.id} line={line} aside={t(`again.row.${heap}`)} />),
      )}
    </>
  );
}

type Kept = Stands<Bodies["visit.judged-again"]>;

function KeptOne({ on, kept, newest }: { readonly on: OnDesk; readonly kept: Kept; readonly newest: boolean }) {
  const app = useApp();
  const changes = useLoaded(async () => ({ is: await judgementsOf(app, kept.value) }), kept.id);
  const when = `${day(kept.at.wall)}, ${clock(kept.at.wall)}`;
  return (
    <Band heading={t("again.kept")} aside={t("again.kept.says", { name: personName(on.visit, kept.by), when })}>
      {changes?.is && <Changes lines={changeLines(on.known, on.who, changes.is)} />}
      {newest && (
        <div class="acts">
          <Tool words={t("again.undo")} onPress={() => void undo(app.journal, on.stream, { ids: [kept.id] })} />
        </div>
      )}
    </Band>
  );
}

/** Every judging again that stands, the newest first; only that one is taken back, as with any last act. */
export const JudgedBefore = ({ on }: { readonly on: OnDesk }) => (
  <>
    {[...on.visit.judgedAgain].reverse().map((kept, index) => (
      <KeptOne key={kept.id} on={on} kept={kept} newest={index === 0} />
    ))}
  </>
);
