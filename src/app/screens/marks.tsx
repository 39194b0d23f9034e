/** Marks over a picture: arrow, ring, words, a known length and lengths measured by it. Never draws into the picture. */
import { useState } from "preact/hooks";
import { foldPictures, MARK_TOOLS, type MarkTool, pictureKey, undoable } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { markMade } from "../state/mark-made.js";
import { begin, isWhole, type Marking, moveBy, setHere } from "../state/marking.js";
import { drawMark, removeMark } from "../state/marks-acts.js";
import { type MarksView, marksSentence, marksView } from "../state/marks-view.js";
import { undo } from "../state/reply-acts.js";
import { type ParamsOf, to } from "../state/routes.js";
import { decimalComma } from "../texts/figures.js";
import { t } from "../texts/marks.js";
import { MissingScreen, Plain } from "./frame.js";
import { MarkFinish, NOTHING_TYPED } from "./marks-finish.js";
import { MarksStage } from "./marks-stage.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { pictureWhere } from "./picture-where.js";

const NEAREST = 8;
const MOVES = [
  ["left", -1, 0],
  ["up", 0, -1],
  ["down", 0, 1],
  ["right", 1, 0],
] as const;

type Kept = OnDesk["visit"]["pictures"][number];

function promptFor(marking: Marking | undefined, kept: number | undefined): string {
  if (!marking) return kept === undefined ? t("marks.choose") : t("marks.kept", { n: kept });
  const { here, tool, set } = marking;
  const at = here ? t("marks.at", { x: Math.round(here[0] * 100), y: Math.round(here[1] * 100) }) : "";
  const isFirst = !here || (set.length === 0 && !marking.placed);
  const asks = isWhole(marking) ? t("marks.done") : isFirst ? t(`marks.${tool}.first`) : t(`marks.${tool}.second`);
  return `${asks} ${at}`.trim();
}

/** The marks in words, each with its way back. */
function MarkRows({ view, onRemove }: { readonly view: MarksView; readonly onRemove?: (mark: string) => void }) {
  return (
    <Band heading={t("marks.list")}>
      {view.lines.length === 0 && <p class="remark">{t("marks.none")}</p>}
      {view.lines.map(({ mark, number, says, second }) => (
        <div class="mark-row" key={mark}>
          <span class="lead n">{number}</span>
          <span>
            <span class="row-title">{says}</span>
            {second && <span class="small n"> {second}</span>}
          </span>
          {onRemove && (
            <button
              type="button"
              class="tool plain"
              aria-label={t("marks.remove.one", { n: number })}
              onClick={() => onRemove(mark)}
            >
              {t("marks.remove")}
            </button>
          )}
        </div>
      ))}
      {view.measures && <p class="remark">{t("marks.plane")}</p>}
    </Band>
  );
}

function ToolChoice({
  chosen,
  mayMeasure,
  onChoose,
}: {
  readonly chosen: MarkTool | undefined;
  readonly mayMeasure: boolean;
  readonly onChoose: (tool: MarkTool) => void;
}) {
  return (
    <div class="form">
      <fieldset class="mark-tools" aria-label={t("marks.tools")}>
        {MARK_TOOLS.map((tool) => (
          <button
            key={tool}
            type="button"
            class="tool plain"
            aria-pressed={tool === chosen}
            disabled={tool === "length" && !mayMeasure}
            onClick={() => onChoose(tool)}
          >
            {t(`marks.tool.${tool}`)}
          </button>
        ))}
      </fieldset>
      {!mayMeasure && <p class="small">{t("marks.need-scale")}</p>}
    </div>
  );
}

function Draws({ on, kept, where }: { readonly on: OnDesk; readonly kept: Kept; readonly where: string }) {
  const { journal } = useApp();
  const [marking, setMarking] = useState<Marking>();
  const [nearer, setNearer] = useState(1);
  const [wide, setWide] = useState(1);
  const [typed, setTyped] = useState(NOTHING_TYPED);
  const [said, setSaid] = useState<number>();
  const { blob, width, height } = kept.value;
  const pictures = foldPictures(on.visit.ledger.log.values());
  const view = marksView(pictures.marks.get(pictureKey(blob)) ?? [], { width, height });
  const closed = on.visit.closed !== undefined;
  const whole = marking !== undefined && isWhole(marking);
  const made =
    marking && markMade({ marking, ...typed, shown: wide, width, scale: view.scale, decimalComma: decimalComma.value });
  const isTypedWrong = whole && marking.tool === "scale" && typed.value.trim() !== "" && !made;
  const start = (tool: MarkTool): void => {
    setMarking(begin(tool));
    setTyped({ ...NOTHING_TYPED, unit: typed.unit });
    setSaid(undefined);
  };
  const keep = (): void => {
    if (!made) return;
    setMarking(undefined);
    setSaid(view.lines.length + 1);
    void drawMark(journal, on.stream, blob, made);
  };
  const goOn = (): void => {
    if (!marking) return;
    if (made) keep();
    else setMarking(setHere(marking));
  };
  const writer = journal.writer.value;
  const [last] = writer === undefined ? [] : undoable(pictures, writer);
  const unread = pictures.trouble.unknown.length;
  return (
    <>
      <MarksStage
        picture={kept.value}
        alt={where}
        view={view}
        label={marksSentence(view)}
        nearer={nearer}
        marking={marking}
        onMarking={setMarking}
        onEnter={goOn}
        onWide={setWide}
      />
      <div class="acts mark-keys">
        <Tool words={t("marks.further")} disabled={nearer === 1} onPress={() => setNearer(nearer / 2)} />
        <span class="n">{t("marks.zoom", { n: nearer })}</span>
        <Tool words={t("marks.nearer")} disabled={nearer === NEAREST} onPress={() => setNearer(nearer * 2)} />
      </div>
      {!closed && (
        <>
          <p class="remark" role="status">
            {promptFor(marking, said)}
          </p>
          {marking && (
            <>
              <fieldset class="acts mark-keys" aria-label={t("marks.move")}>
                {MOVES.map(([way, dx, dy]) => (
                  <Tool
                    key={way}
                    words={t(`marks.${way}`)}
                    onPress={() => setMarking(moveBy(marking, dx / wide, (dy / wide) * (width / height)))}
                  />
                ))}
              </fieldset>
              {whole && (
                <div class="form">
                  <MarkFinish
                    tool={marking.tool}
                    typed={typed}
                    onTyped={setTyped}
                    problem={isTypedWrong ? t("marks.known.problem") : undefined}
                  />
                </div>
              )}
              <div class="acts">
                {whole ? (
                  <NextAction words={t("marks.keep")} disabled={!made} onPress={keep} />
                ) : (
                  <NextAction words={marking.here ? t("marks.set") : t("marks.begin")} onPress={goOn} />
                )}
                <Tool words={t("marks.stop")} onPress={() => setMarking(undefined)} />
              </div>
            </>
          )}
          <ToolChoice chosen={marking?.tool} mayMeasure={view.scale !== undefined} onChoose={start} />
        </>
      )}
      {closed && <Notice kind="plain" title={t("marks.closed")} />}
      {unread > 0 && <Notice kind="plain" title={t("marks.newer", { n: unread })} />}
      <MarkRows
        view={view}
        {...(closed ? {} : { onRemove: (mark: string) => void removeMark(journal, on.stream, blob, mark) })}
      />
      {last && !closed && (
        <ListRow
          folded
          title={t("marks.undo.says")}
          aside={t("marks.undo")}
          onPress={() => void undo(journal, on.stream, last)}
        />
      )}
    </>
  );
}

function MarksBody({ on, nonce }: { readonly on: OnDesk; readonly nonce: string }) {
  const kept = on.visit.pictures.find(({ id }) => id.endsWith(`/${nonce}`));
  if (!kept) return <MissingScreen />;
  const where = pictureWhere(on.known, kept.value);
  const back = to("picture", { visit: on.param, picture: nonce });
  return (
    <Plain back={t("photo.view")} href={back} title={t("marks.title")} second={where}>
      {kept.value.unreadable ? (
        <Notice kind="plain" title={t("marks.unreadable")} says={t("marks.unreadable.says")} />
      ) : (
        <Draws on={on} kept={kept} where={where} />
      )}
    </Plain>
  );
}

export const Marks = ({ params }: { readonly params: ParamsOf<"marks"> }) => (
  <OnVisit param={params.visit}>{(on) => <MarksBody on={on} nonce={params.picture} />}</OnVisit>
);
