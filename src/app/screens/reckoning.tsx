/** One trade function: its boxes, what they come to, the formula and its source; kept into a visit as a note. */
import { useState } from "preact/hooks";
import { isList, isWordArgument, TRADE_TABLE, type TradeFunction, tellSource } from "../../core/trade/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band, Pool } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { UnitSwitch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { openVisits } from "../state/reckoner-view.js";
import {
  type Box,
  emptyReckoning,
  type Reckoning,
  type ReckoningForm,
  reckoning,
  reckoningNote,
  reckoningTyped,
  unitsFor,
  wordShown,
} from "../state/reckoning-view.js";
import { type ParamsOf, to, visitStreamOf } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { note } from "../state/visit-acts.js";
import { t } from "../texts/bench.js";
import { day } from "../texts/figures.js";
import { unitWords } from "../texts/units.js";
import { MissingScreen, Plain } from "./frame.js";

type Argument = TradeFunction["arguments"][number];

interface UnitsProps {
  readonly label: string;
  readonly kind: TradeFunction["gives"];
  readonly unit: string;
  readonly onChoose: (unit: string) => void;
}
function Units({ label, kind, unit, onChoose }: UnitsProps) {
  const units = unitsFor(kind);
  if (units.length < 2) return null;
  const choices = units.map((id) => ({ id, words: unitWords(id) }));
  return <UnitSwitch label={label} choices={choices} chosen={unit} onChoose={onChoose} />;
}

interface BoxProps {
  readonly argument: Argument;
  readonly box: Box;
  readonly problem: string | undefined;
  readonly set: (box: Box) => void;
}

/** One of the words an argument may be. */
function WordBox({ argument, words, box, set }: Omit<BoxProps, "problem"> & { readonly words: readonly string[] }) {
  return (
    <>
      <p class="label">{argument.says}</p>
      <ReplyGrid
        kind="choice"
        label={argument.says}
        replies={words.map((word) => ({ id: word, words: wordShown(word), chosen: word === box.texts[0] }))}
        onChoose={(word) => set({ ...box, texts: [word] })}
      />
    </>
  );
}

/** Figures, or a text of one's own: one box, or as many as there are figures. */
function TypedBoxes({ argument, box, problem, set }: BoxProps) {
  const many = isList(argument);
  const unit = box.unit === "" ? undefined : unitWords(box.unit);
  return (
    <>
      {box.texts.map((text, index) => (
        <Field
          key={index}
          id={`${argument.name}-${index}`}
          kind={isWordArgument(argument) ? "text" : "number"}
          label={many ? t("bench.nth", { says: argument.says, n: index + 1 }) : argument.says}
          value={text}
          onInput={(typed) => set({ ...box, texts: box.texts.map((one, at) => (at === index ? typed : one)) })}
          {...(unit === undefined || unit === "" ? {} : { unit })}
          {...(problem !== undefined && index === box.texts.length - 1 ? { problem } : {})}
        />
      ))}
      <Units
        label={t("bench.unit", { says: argument.says })}
        kind={argument.kind}
        unit={box.unit}
        onChoose={(chosen) => set({ ...box, unit: chosen })}
      />
      {many && (
        <Tool
          words={t("bench.one-more")}
          says={argument.says}
          onPress={() => set({ ...box, texts: [...box.texts, ""] })}
        />
      )}
    </>
  );
}

function ArgumentBox(props: BoxProps) {
  const { argument } = props;
  const words = isWordArgument(argument) ? argument.words : undefined;
  return <div class="form">{words ? <WordBox {...props} words={words} /> : <TypedBoxes {...props} />}</div>;
}

function Result({ fn, form, came, set }: FormState & { readonly fn: TradeFunction; readonly came: Reckoning }) {
  return (
    <Pool as="section" label={t("bench.result")}>
      <div role="status">
        <p class="label">{came.is === "refused" ? t("bench.refused") : t("bench.result")}</p>
        <p class={came.is === "answer" ? "answer" : undefined}>
          {came.is !== "open" ? came.says : came.left > 0 ? t("bench.open", { n: came.left }) : t("bench.see-box")}
        </p>
      </div>
      <Units
        label={t("bench.result-unit")}
        kind={fn.gives}
        unit={form.resultUnit}
        onChoose={(resultUnit) => set({ ...form, resultUnit })}
      />
    </Pool>
  );
}

interface FormState {
  readonly form: ReckoningForm;
  readonly set: (form: ReckoningForm) => void;
}

/** Keeps the sum in the visit one came from, or in one of those left open. */
function Keep({ text, visit }: { readonly text: string; readonly visit: string | undefined }) {
  const { journal } = useApp();
  const [asking, setAsking] = useState(false);
  const [kept, setKept] = useState("");
  const open = openVisits(journal.summaries.value ?? []);
  const keep = (stream: string): void => {
    setAsking(false);
    void note(journal, stream, text, {}).then((done) => done && setKept(text));
  };
  const here = open.find(({ stream }) => visit !== undefined && stream === visitStreamOf(visit));
  return (
    <>
      {kept !== text && (
        <NextAction words={t("bench.keep")} onPress={() => (here ? keep(here.stream) : setAsking(true))} />
      )}
      <p class="remark" role="status">
        {kept === text ? t("bench.kept") : ""}
      </p>
      <Sheet open={asking} title={t("bench.keep.where")} closeWords={t("app.close")} onClose={() => setAsking(false)}>
        {open.length === 0 && <p>{t("bench.keep.no-visit")}</p>}
        {open.map(({ stream, title, on }) => (
          <ListRow key={stream} folded title={title} second={day(on)} onPress={() => keep(stream)} />
        ))}
      </Sheet>
    </>
  );
}

interface ReckoningProps {
  readonly fn: TradeFunction;
  readonly visit?: string | undefined;
}

function ReckoningBody({ fn, visit }: ReckoningProps) {
  const { remembered } = useApp();
  const typed = `reckoning ${fn.name}`;
  const [form, setForm] = useState(() => reckoningTyped(fn, typedBefore(remembered, typed)));
  const set = (next: ReckoningForm): void => {
    setForm(next);
    keepTyped(remembered, typed, JSON.stringify(next));
  };
  const came = reckoning(fn, form);
  return (
    <Plain
      back={t("bench.title")}
      href={visit === undefined ? to("reckoner") : to("visit-reckoner", { visit })}
      title={fn.says}
    >
      {fn.arguments.map((argument) => (
        <ArgumentBox
          key={argument.name}
          argument={argument}
          box={form.boxes[argument.name] ?? { texts: [""], unit: "" }}
          problem={came.at.get(argument.name)}
          set={(box) => set({ ...form, boxes: { ...form.boxes, [argument.name]: box } })}
        />
      ))}
      <Result fn={fn} form={form} came={came} set={set} />
      <div class="acts">
        {came.is === "answer" && <Keep text={reckoningNote(fn, form, came.says)} visit={visit} />}
        <Tool words={t("bench.clear")} onPress={() => set(emptyReckoning(fn))} />
      </div>
      <Band heading={t("bench.formula")}>
        <p class="remark">{fn.formula}</p>
      </Band>
      <Band heading={t("bench.source")}>
        <p class="remark">{tellSource(fn.source)}</p>
        <p class="remark small">{t(`bench.basis.${fn.source.basis}`)}</p>
      </Band>
    </Plain>
  );
}

function Found({ of, visit }: { readonly of: string; readonly visit?: string }) {
  const fn = TRADE_TABLE.get(of);
  return fn ? <ReckoningBody key={of} fn={fn} visit={visit} /> : <MissingScreen />;
}

export const ReckoningScreen = ({ params }: { readonly params: ParamsOf<"reckoning"> }) => <Found of={params.of} />;
export const VisitReckoning = ({ params }: { readonly params: ParamsOf<"visit-reckoning"> }) => (
  <Found of={params.of} visit={params.visit} />
);
