/** The car's limits book: what an open visit wants first, the car's own figures, and every default by its sheet. */
import { useEffect, useMemo, useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Fold } from "../parts/fold.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { type App, useApp } from "../state/app.js";
import { carTitle, visitLines } from "../state/car-view.js";
import { deskOf } from "../state/desks.js";
import type { FrozenSheetFile } from "../state/frozen.js";
import { type BookNeeds, bookView, findLimits, type LimitLine, limitLines } from "../state/limits-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { t } from "../texts/limits.js";
import { problemText } from "../texts/problems.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useSheetFiles } from "./use-sheets.js";

/** Found limits shown at once; one more word finds the rest. */
const MOST_FOUND = 30;
/** So many rows stand open at the head; more are folded. */
const MOST_OPEN = 8;

interface RowsProps {
  readonly lines: readonly LimitLine[];
  readonly car: string;
  readonly sheet?: boolean;
  /** The heading says already why they stand here. */
  readonly headed?: boolean;
}

const Rows = ({ lines, car, sheet, headed }: RowsProps) => (
  <>
    {lines.map((line) => (
      <ListRow
        key={line.id}
        title={line.title}
        second={sheet ? `${line.sheet}. ${line.second}` : line.second}
        aside={headed ? undefined : line.mine ? t("limits.yours") : line.wanted ? t("book.wanted.aside") : undefined}
        href={to("limit", { car, limit: line.id })}
      />
    ))}
  </>
);

/** What the car's open visits need of the book; each is judged for it, where it is not yet. */
function useNeeds(app: App, car: CarState): BookNeeds {
  const open = visitLines(app.journal.summaries.value ?? [], car.stream).filter((visit) => !visit.closed);
  const desks = open.map(({ stream }) => deskOf(app, stream));
  useEffect(() => {
    for (const desk of desks) desk.judge();
  }, [open.map(({ stream }) => stream).join(" ")]);
  return {
    sheets: new Set(desks.flatMap((desk) => desk.laid.value?.frozen.sheets.map(({ sheet }) => sheet.id) ?? [])),
    judging: new Set(
      desks.flatMap((desk) =>
        (desk.assessment.value?.readings ?? []).flatMap(({ limits }) => limits.map(({ limit }) => limit)),
      ),
    ),
  };
}

/** The whole book as a table, made and handed over by the same press. */
function AsTable({ car, files }: { readonly car: CarState; readonly files: readonly FrozenSheetFile[] }) {
  const app = useApp();
  const [says, setSays] = useState("");
  const [table, setTable] = useState<typeof import("../state/limits-table.js")>();
  // There before the press: a share sheet opens only straight from it.
  useEffect(() => void import("../state/limits-table.js").then((file) => setTable(() => file)), []);
  const hand = (): void => {
    if (!table) return;
    const bytes = new TextEncoder().encode(table.limitsCsv(car, files));
    const name = `${carTitle(car).replace(/[^\p{L}\p{N} .,()-]+/gu, "-")}, ${t("book.table.name")}.csv`;
    app.files
      .ready({ name, type: "text/csv", bytes })
      .hand()
      .then((handed) =>
        setSays(handed === "tap-again" ? t("book.table.again") : handed === "stopped" ? "" : t("book.table.done")),
      );
  };
  return (
    <div class="acts">
      <Tool words={t("book.table")} says={t("book.table.says")} disabled={!table} onPress={hand} />
      <p class="small" role="status">
        {says}
      </p>
    </div>
  );
}

function LimitsBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const app = useApp();
  useEffect(() => void app.journal.refresh(), [app.journal]);
  const read = useSheetFiles();
  const needs = useNeeds(app, car);
  const key = `limits ${car.stream}`;
  const [typed, setTyped] = useState(() => typedBefore(app.remembered, key));
  const lines = useMemo(() => (read ? limitLines(car, read.files) : []), [car, read]);
  if (!read) return <OpeningScreen />;
  const view = bookView(lines, needs);
  const found = findLimits(lines, typed);
  const type = (text: string): void => {
    setTyped(text);
    keepTyped(app.remembered, key, text);
  };
  return (
    <Plain back={t("car.back")} href={to("car", { car: param })} title={t("limits.title")} second={t("book.says")}>
      {read.problems.map((problem) => (
        <Notice key={problem.code} kind="error" title={problemText(problem)} />
      ))}
      <div class="form">
        <Field id="find-limit" kind="search" label={t("book.find")} value={typed} onInput={type} />
      </div>
      <p class="remark" role="status">
        {typed.trim() !== "" && t("book.found", { n: found.length })}
        {found.length > MOST_FOUND && ` ${t("book.narrow", { n: MOST_FOUND })}`}
      </p>
      {typed.trim() !== "" ? (
        <Band>
          <Rows lines={found.slice(0, MOST_FOUND)} car={param} sheet />
        </Band>
      ) : (
        <>
          {view.wanted.length > 0 && (
            <Band heading={t("book.wanted")} aside={String(view.wanted.length)}>
              <p class="remark small">{t("book.wanted.says")}</p>
              <Rows lines={view.wanted} car={param} sheet headed />
            </Band>
          )}
          {view.own.length > 0 && (
            <Band heading={t("book.own")} aside={String(view.own.length)}>
              <Rows lines={view.own} car={param} sheet headed />
            </Band>
          )}
          {view.used.length > 0 && (
            <Fold title={t("book.used")} count={view.used.length} open={view.used.length <= MOST_OPEN}>
              <Rows lines={view.used} car={param} sheet />
            </Fold>
          )}
          <Band heading={t("book.sheets")} aside={String(lines.length)}>
            {view.sheets.map(({ sheet, lines: of }) => (
              <Fold key={sheet} title={sheet} count={of.length} open={false}>
                <Rows lines={of} car={param} />
              </Fold>
            ))}
          </Band>
          <AsTable car={car} files={read.files} />
        </>
      )}
    </Plain>
  );
}

export const Limits = ({ params }: { readonly params: ParamsOf<"limits"> }) => (
  <OnCar param={params.car}>{(car) => <LimitsBody car={car} param={params.car} />}</OnCar>
);
