/** The lines of judging again: limits and sheets that change, findings before and after, and what was kept so far. */
import type { Bodies, Stands } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { FindingRow } from "../parts/finding-row.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { personName } from "../state/history-view.js";
import { judgementsOf } from "../state/judge-again.js";
import { type ChangeLine, type ChangeLines, changeLines, type PlainLine } from "../state/judge-again-view.js";
import { undo } from "../state/reply-acts.js";
import { clock, day, t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";
import { useLoaded } from "./use-loaded.js";

const Lines = ({ heading, lines }: { readonly heading: string; readonly lines: readonly PlainLine[] }) =>
  lines.length === 0 ? null : (
    <Band heading={heading}>
      {lines.map((line) => (
        <ListRow key={line.id} title={line.title} second={line.second} />
      ))}
    </Band>
  );

interface SetBandsProps {
  readonly limits: readonly PlainLine[];
  readonly sheets: readonly PlainLine[];
}

export const SetBands = ({ limits, sheets }: SetBandsProps) => (
  <>
    <Lines heading={t("again.limits")} lines={limits} />
    <Lines heading={t("again.sheets")} lines={sheets} />
  </>
);

const HEAPS = ["appeared", "changed", "went"] as const;
type Heap = (typeof HEAPS)[number];

function ChangeRow({ line, aside }: { readonly line: ChangeLine; readonly aside?: string }) {
  const { mark, title, second } = line;
  return (
    <FindingRow
      mark={mark}
      markWord={t(`mark.${mark}`)}
      title={title}
      second={second}
      {...(aside === undefined ? {} : { aside })}
    />
  );
}

const noneOf = (lines: ChangeLines): boolean => HEAPS.every((heap) => lines[heap].length === 0);

/** What would appear, be graded otherwise and go, each under its own heading. */
export function ChangeBands({ lines }: { readonly lines: ChangeLines }) {
  if (noneOf(lines)) return <p class="remark">{t("again.none")}</p>;
  const heaps: readonly Heap[] = HEAPS.filter((heap) => lines[heap].length > 0);
  return (
    <>
      {heaps.map((heap) => (
        <Band key={heap} heading={t(`again.${heap}`)} aside={String(lines[heap].length)}>
          {lines[heap].map((line) => (
            <ChangeRow key={line.id} line={line} />
          ))}
        </Band>
      ))}
    </>
  );
}

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
