/**
 * A case: which rule it fires, what is said, what must come out, what must just miss; and whether it does so now. It is
 * put together from replies on the trying screen; here it is read, corrected line by line, and proved.
 */
import { useState } from "preact/hooks";
import type { CaseFailure } from "../../core/assess/author.js";
import type { SheetCase } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { expectFrom, nameOfKey, sayExpectKey, sayReplyKey, typedOf, valuesOf, writtenOf } from "../state/case-lines.js";
import { to } from "../state/routes.js";
import type { Choice } from "../state/sheet-choices.js";
import { entriesAt, type Inside, listAt, withAt, withoutAt } from "../state/sheet-forms.js";
import { itemTitle } from "../state/sheet-items-view.js";
import { canBeTried, keyOfSheet, tried } from "../state/sheet-trying.js";
import { itemsIn } from "../state/sheet-work.js";
import { t as shared } from "../texts/index.js";
import { t } from "../texts/sheet-rules.js";
import { Boxes, boxId, FigureBox, ItemForm, TextBox, useItem, useTold } from "./item-boxes.js";
import { ChoiceBox } from "./item-choice.js";
import type { ItemFormProps } from "./item-form.js";
import { useLoaded } from "./use-loaded.js";
import { useRuleDesk } from "./use-rule-desk.js";

const hasNearMiss = (one: SheetCase): boolean =>
  Object.keys({ ...one["near-miss"], ...one["near-miss-facts"] }).length > 0;

/** Whether it comes out now, with the reasons where it does not. */
function ComesOut() {
  const { is, work, change } = useItem();
  const { sheetTools } = useApp();
  const ready = canBeTried(work);
  const one = is.value as SheetCase;
  const ran = useLoaded(
    async () => (ready ? await (await sheetTools()).proveCases(work, [one]) : undefined),
    `${ready} ${keyOfSheet(work)} ${JSON.stringify(one)}`,
  );
  const [first] = ran ?? [];
  if (!ready) return <p class="remark">{t(work.checked === "yet" ? "try.checking" : "case.not-yet")}</p>;
  if (!first) return <p class="remark">{t("case.running")}</p>;
  if (first.failures.length === 0)
    return <Notice kind="plain" title={t(hasNearMiss(one) ? "case.holds" : "case.holds.alone")} />;
  const now = first.outcome ? expectFrom({ id: one.fires }, first.outcome) : {};
  const isExpected = first.failures.some((failure) => failure.is === "expected" && Object.keys(now).length > 0);
  return (
    <Notice
      kind="plain"
      title={t("case.fails")}
      says={first.failures.map(tellFailure).join(" ")}
      {...(isExpected
        ? { action: { words: t("case.expect.now"), onPress: () => change((item) => withAt(item, ["expect"], now)) } }
        : {})}
    />
  );
}

function tellFailure(failure: CaseFailure): string {
  switch (failure.is) {
    case "assessing":
      return t("case.fails.assessing");
    case "expected":
      return failure.found === ""
        ? t("case.fails.nothing", { key: failure.key, wanted: failure.wanted })
        : t("case.fails.expected", { key: failure.key, wanted: failure.wanted, found: failure.found });
    case "by-others":
      return t("case.fails.by-others");
    case "not-open":
      return t("case.fails.not-open");
    case "near-miss":
      return t(failure.rule === "true" ? "case.fails.miss-true" : "case.fails.miss-unknown", { place: failure.place });
  }
}

interface LinesProps {
  readonly at: Inside;
  readonly heading: string;
  readonly says: string;
  /** Keys that may still be added. */
  readonly more?: readonly string[];
  readonly label: (key: string) => string;
  /** What may stand there, where it is one of a few. */
  readonly choices?: (key: string) => readonly Choice[];
  /** How a value is spoken. */
  readonly spoken?: (key: string, value: string) => string;
}

/** Lines of what is said or expected, each changed where it stands; emptied, a line goes. */
function Lines({ at, heading, says, more = [], label, choices, spoken }: LinesProps) {
  const { is, change } = useItem();
  const { problem } = useTold(at);
  const [added, setAdded] = useState<string>();
  const lines = entriesAt(is, at);
  const left = more.filter((key) => !lines.some(([there]) => there === key));
  const shown = added !== undefined && left.includes(added) ? [...lines, [added, ""] as const] : lines;
  const put = (key: string, text: string): void =>
    change((item) =>
      text.trim() === ""
        ? withoutAt(item, [...at, key])
        : withAt(item, [...at, key], at[0] === "expect" ? text.trim() : typedOf(text)),
    );
  return (
    <Boxes heading={heading}>
      <p class="small">{says}</p>
      {shown.map(([key, value]) => (
        <Line
          key={`${key} ${writtenOf(value)}`}
          id={boxId([...at, key])}
          label={label(key)}
          value={writtenOf(value)}
          says={spoken?.(key, writtenOf(value)) ?? ""}
          choices={Array.isArray(value) ? [] : (choices?.(key) ?? [])}
          onPut={(text) => put(key, text)}
        />
      ))}
      {problem && <p class="problem">{problem}</p>}
      {left.length > 0 && (
        <Field
          id={boxId([...at, "more"])}
          kind="select"
          label={t("case.line.add")}
          value=""
          options={[
            { value: "", words: t("case.line.choose") },
            ...left.map((value) => ({ value, words: label(value) })),
          ]}
          onInput={setAdded}
        />
      )}
    </Boxes>
  );
}

interface LineProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly says: string;
  readonly choices: readonly Choice[];
  readonly onPut: (text: string) => void;
}
function Line({ id, label, value, says, choices, onPut }: LineProps) {
  const [text, setText] = useState(value);
  if (choices.length > 0)
    return (
      <Field
        id={id}
        kind="select"
        label={label}
        value={value}
        options={[
          { value: "", words: t(value === "" ? "case.line.choose-value" : "case.line.away") },
          ...(value === "" || choices.some((one) => one.value === value) ? [] : [{ value, words: value }]),
          ...choices,
        ]}
        onInput={onPut}
      />
    );
  return (
    <Field
      id={id}
      kind="text"
      label={label}
      value={text}
      onInput={setText}
      onCommit={(written) => written.trim() !== value && onPut(written)}
      {...(says === "" || says === value ? {} : { help: says })}
    />
  );
}

/** Visits to the same car before this one. */
function Earlier({ label }: Pick<LinesProps, "label">) {
  const { is, change } = useItem();
  const visits = listAt(is, ["earlier"]);
  const keys = entriesAt(is, ["replies"]).map(([key]) => key);
  return (
    <>
      {visits.map((_, index) => (
        <section key={index}>
          <Boxes heading={t("case.earlier", { n: index + 1 })}>
            <TextBox
              at={["earlier", index, "at"]}
              label={t("case.earlier.at")}
              help={t("case.earlier.at.help")}
              wanted
            />
            <FigureBox at={["earlier", index, "odometer"]} label={t("case.odometer")} unit="km" />
          </Boxes>
          <Lines
            at={["earlier", index, "replies"]}
            heading={t("case.replies")}
            says={t("case.earlier.says")}
            more={keys}
            label={label}
          />
          <div class="acts">
            <Tool
              words={t("case.earlier.away")}
              onPress={() => change((item) => withoutAt(item, ["earlier", index]))}
            />
          </div>
        </section>
      ))}
      <div class="acts">
        <Tool
          words={t("case.earlier.add")}
          onPress={() =>
            change((item) =>
              withAt(item, ["earlier"], [...listAt(item, ["earlier"]), { at: "2025-06-01", replies: {} }]),
            )
          }
        />
      </div>
    </>
  );
}

function CaseForm() {
  const { is, work, language } = useItem();
  const { router } = useApp();
  const desk = useRuleDesk(work);
  const one = is.value as SheetCase;
  const rules: readonly Choice[] = [...itemsIn(work, "rules")].map(([value, rule], index) => ({
    value,
    words: `${index + 1}. ${itemTitle(work, "rules", rule)}`,
  }));
  const gates = work.sheet.gates.map(({ id }) => ({
    value: id,
    words: work.sheet.texts[language]?.gates?.[id]?.name ?? id,
  }));
  const label = (key: string): string => (desk ? sayReplyKey(desk.names, key) : key);
  const fact = (key: string): string => desk?.names.spoken.name(`car.${key.replaceAll("-", "_")}`) ?? key;
  const spoken = (key: string, value: string): string => desk?.names.spoken.word(nameOfKey(key), value) ?? "";
  const offered = (key: string): readonly Choice[] => (desk ? valuesOf(desk.names, nameOfKey(key)) : []);
  const ofFact = (key: string): readonly Choice[] =>
    desk ? valuesOf(desk.names, `car.${key.replaceAll("-", "_")}`) : [];
  const grades = GRADES.map((value) => ({ value, words: shared(`grade.${value}`) }));
  const facts = work.common.facts.map(({ id }) => id);
  const tryIt = (): void => {
    tried.set(work.draft, { said: one.replies, facts: one.facts ?? {} });
    router.go(to("sheet-try", { sheet: work.sheet.id }));
  };
  return (
    <>
      <ComesOut />
      <Boxes>
        <ChoiceBox at={["fires"]} label={t("case.fires")} choices={[...rules, ...gates]} wanted />
      </Boxes>
      <Lines
        at={["replies"]}
        heading={t("case.replies")}
        says={t("case.replies.says")}
        choices={offered}
        {...{ label, spoken }}
      />
      <div class="acts">
        <Tool words={t("case.try")} onPress={tryIt} />
      </div>
      <Lines
        at={["facts"]}
        heading={t("case.facts")}
        says={t("case.facts.says")}
        more={facts}
        label={fact}
        choices={ofFact}
      />
      <Lines
        at={["expect"]}
        heading={t("case.expect")}
        says={t("case.expect.says")}
        choices={(key) => (key.includes(".") && !key.startsWith("gate.") ? grades : [])}
        label={(key) => (desk ? sayExpectKey(desk.names, key) : key)}
      />
      <Lines
        at={["near-miss"]}
        heading={t("case.near-miss")}
        says={t("case.near-miss.says")}
        more={entriesAt(is, ["replies"]).map(([key]) => key)}
        choices={offered}
        {...{ label, spoken }}
      />
      <Lines
        at={["near-miss-facts"]}
        heading={t("case.near-miss-facts")}
        says={t("case.near-miss-facts.says")}
        more={facts}
        label={fact}
        choices={ofFact}
      />
      <Boxes>
        <FigureBox at={["odometer"]} label={t("case.odometer")} unit="km" />
      </Boxes>
      <Earlier label={label} />
    </>
  );
}

export const ItemCase = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <CaseForm />
  </ItemForm>
);
