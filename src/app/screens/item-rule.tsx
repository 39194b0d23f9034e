/** A rule: where and when it holds, what it concludes, how bad that is, what follows. Said in one sentence at its head. */
import { useMemo, useState } from "preact/hooks";
import type { Rule } from "../../core/sheet/run.js";
import { GRADES, SURENESS } from "../../core/terms/index.js";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { useApp } from "../state/app.js";
import { sayRule } from "../state/rule-say.js";
import {
  type Choice,
  cautionChoices,
  faultChoices,
  jobChoices,
  kindChoices,
  pointChoices,
  readingChoices,
} from "../state/sheet-choices.js";
import { freshSlug, isOnAt, namesAt, textAt, valueAt, withAt } from "../state/sheet-forms.js";
import { relationsFrom } from "../state/sheet-names.js";
import { putItem } from "../state/sheet-work-acts.js";
import { t as shared } from "../texts/index.js";
import { relationWords } from "../texts/relations.js";
import { t } from "../texts/sheet-rules.js";
import { Boxes, ItemForm, SwitchBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { ConditionField } from "./item-condition.js";
import type { ItemFormProps } from "./item-form.js";
import { RuleAt, RuleEffect } from "./item-rule-effect.js";
import { useRuleDesk } from "./use-rule-desk.js";

/** What a rule does, as it stands now. */
function Says() {
  const { is, work } = useItem();
  const desk = useRuleDesk(work);
  const rule = is.value as Rule | undefined;
  const says = useMemo(
    () => desk && rule && textAt(is, ["when"]) !== "" && sayRule(desk.names, rule, desk.tools.readCondition),
    [desk, is],
  );
  return says ? <p class="remark">{says}</p> : null;
}

function When() {
  const { is, work, told, change } = useItem();
  const scope = textAt(is, ["scope"]) || "car";
  const supports = namesAt(is, ["supports"]);
  const of = (at: string, index?: number) =>
    told.filter(
      ({ about }) => about?.inside[0] === at && (index === undefined || String(about.inside[1]) === String(index)),
    );
  const shared = { scope, work, provisional: isOnAt(is, ["provisional"]) };
  return (
    <>
      <ConditionField
        id="rule-when"
        label={t("rule.when")}
        value={textAt(is, ["when"])}
        told={of("when")}
        onChange={(cel) => change((item) => withAt(item, ["when"], cel))}
        {...shared}
      />
      {supports.map((cel, index) => (
        <ConditionField
          key={`${index} ${supports.length}`}
          id={`rule-supports-${index}`}
          label={t("rule.support", { n: index + 1 })}
          value={cel}
          told={of("supports", index)}
          optional
          onChange={(next) =>
            change((item) => {
              const now = namesAt(item, ["supports"]);
              const to = next.trim() === "" ? now.toSpliced(index, 1) : now.with(index, next);
              return withAt(item, ["supports"], to.length === 0 ? undefined : to);
            })
          }
          {...shared}
        />
      ))}
      <div class="acts">
        <Tool
          words={t("rule.support.add")}
          onPress={() => change((item) => withAt(item, ["supports"], [...namesAt(item, ["supports"]), ""]))}
        />
      </div>
    </>
  );
}

const NEW = "new";

/** The fault it names: one there is, or a new one by its words. */
function Fault() {
  const { work, change } = useItem();
  const { journal } = useApp();
  const [words, setWords] = useState<string>();
  const choices: readonly Choice[] = [...faultChoices(work), { value: NEW, words: t("rule.fault.new") }];
  const make = (): void => {
    const says = words?.trim() ?? "";
    if (says === "") return;
    const { id } = work.sheet;
    const taken = [
      ...faultChoices(work).map(({ value }) => value),
      ...(work.changes.items.get("faults")?.keys() ?? []),
    ].map((fault) => fault.slice(id.length + 1));
    const fault = `${id}.${freshSlug(says, "fault", taken)}`;
    const texts = Object.fromEntries(Object.keys(work.sheet.texts).map((language) => [language, { says }]));
    void putItem(journal, work.draft, "faults", fault, { texts }).then(
      (kept) => kept && change((item) => withAt(item, ["fault"], fault)),
    );
    setWords(undefined);
  };
  return (
    <>
      <ChoiceBox
        at={["fault"]}
        label={t("rule.fault")}
        choices={choices}
        wanted
        onPut={(value) =>
          value === NEW ? setWords("") : change((item) => withAt(item, ["fault"], value || undefined))
        }
      />
      {words !== undefined && (
        <>
          <Field
            id="rule-new-fault"
            kind="text"
            label={t("rule.fault.words")}
            help={t("rule.fault.words.help")}
            value={words}
            onInput={setWords}
          />
          <Tool words={t("rule.fault.keep")} disabled={words.trim() === ""} onPress={make} />
        </>
      )}
    </>
  );
}

const BY_LIMIT = "by-limit";
const gradeChoices = (): readonly Choice[] => GRADES.map((value) => ({ value, words: shared(`grade.${value}`) }));

/** Fixed, or as a limit says and no milder than a grade. */
function Grade() {
  const { is, work, change, told } = useItem();
  const by = textAt(is, ["grade", "limit-of"]);
  const isByLimit = typeof valueAt(is, ["grade"]) === "object";
  const readings = readingChoices(work);
  const scope = textAt(is, ["scope"]) || "car";
  const put = (value: string): void =>
    change((item) => {
      if (value !== BY_LIMIT) return withAt(item, ["grade"], value || undefined);
      return withAt(item, ["grade"], { "limit-of": by || (readings[0]?.value ?? "") });
    });
  const isWorse = valueAt(is, ["worse"]) !== undefined;
  return (
    <>
      <Boxes heading={t("rule.grade")}>
        <ChoiceBox
          at={["grade"]}
          label={t("rule.grade.how")}
          value={isByLimit ? BY_LIMIT : textAt(is, ["grade"])}
          choices={[...gradeChoices(), { value: BY_LIMIT, words: t("rule.grade.by-limit") }]}
          onPut={put}
          wanted
        />
        {isByLimit && (
          <>
            <ChoiceBox at={["grade", "limit-of"]} label={t("rule.grade.of")} choices={readings} wanted />
            <ChoiceBox
              at={["grade", "at-least"]}
              label={t("rule.grade.least")}
              choices={gradeChoices()}
              none={t("rule.grade.least.none")}
            />
          </>
        )}
        {isWorse && <ChoiceBox at={["worse", "grade"]} label={t("rule.worse.grade")} choices={gradeChoices()} wanted />}
      </Boxes>
      {isWorse && (
        <ConditionField
          id="rule-worse"
          label={t("rule.worse.when")}
          value={textAt(is, ["worse", "when"])}
          scope={scope}
          work={work}
          told={told.filter(({ about }) => about?.inside[0] === "worse" && about.inside[1] === "when")}
          onChange={(cel) => change((item) => withAt(item, ["worse", "when"], cel))}
        />
      )}
      <div class="acts">
        <Tool
          words={t(isWorse ? "rule.worse.away" : "rule.worse.add")}
          onPress={() =>
            change((item) => withAt(item, ["worse"], isWorse ? undefined : { grade: "dangerous", when: "" }))
          }
        />
      </div>
    </>
  );
}

const CONSEQUENCES = [1, 2, 3, 4] as const;
const LIKELIHOODS = ["A", "B", "C", "D", "E"] as const;

function Urgency() {
  const { is, change } = useItem();
  return (
    <>
      <Boxes heading={t("rule.urgency")}>
        <ChoiceBox
          at={["sure"]}
          label={t("rule.sure")}
          choices={SURENESS.map((value) => ({ value, words: shared(`sure.${value}`) }))}
          wanted
        />
        <ChoiceBox
          at={["consequence"]}
          label={t("rule.consequence")}
          value={textAt(is, ["consequence"])}
          choices={CONSEQUENCES.map((n) => ({ value: String(n), words: t(`rule.consequence.${n}`) }))}
          onPut={(value) => change((item) => withAt(item, ["consequence"], value === "" ? undefined : Number(value)))}
          wanted
        />
        <ChoiceBox
          at={["likelihood"]}
          label={t("rule.likelihood")}
          choices={LIKELIHOODS.map((value) => ({ value, words: t(`rule.likelihood.${value}`) }))}
          wanted
        />
      </Boxes>
      <section class="band">
        <SwitchBox
          at={["must-stand"]}
          label={t("rule.must-stand")}
          onPut={(on) => change((item) => withAt(item, ["must-stand"], on))}
        />
      </section>
    </>
  );
}

/** Points to look at next, here or where a relation leads. */
function Opens() {
  const { is, work } = useItem();
  const desk = useRuleDesk(work);
  const scope = textAt(is, ["scope"]) || "car";
  const points = pointChoices(work);
  const led = desk ? [false, true].flatMap((many) => relationsFrom(desk.names, scope, many)) : [];
  const kinds = new Map(
    [work.sheet, ...work.others].flatMap(({ points: all }) => all.map((one) => [one.id, one.place])),
  );
  const at = led.flatMap(({ name, to }) =>
    points
      .filter(({ value }) => kinds.get(value) === to)
      .map(
        (one): Choice => ({
          ...one,
          value: `${one.value}@${name}`,
          words: t("rule.opens.at", { point: one.words, at: relationWords(name) }),
        }),
      ),
  );
  return <NamesBox at={["opens"]} label={t("rule.opens")} help={t("rule.opens.help")} choices={[...points, ...at]} />;
}

function RuleForm() {
  const { is, work } = useItem();
  const finds = textAt(is, ["effect"]) === "finding";
  return (
    <>
      <Says />
      <Boxes>
        <ChoiceBox
          at={["scope"]}
          label={t("rule.scope")}
          help={t("rule.scope.help")}
          choices={kindChoices(work)}
          wanted
        />
        <RuleEffect />
        {finds && <Fault />}
      </Boxes>
      <When />
      {finds && <Grade />}
      {finds && <Urgency />}
      <Boxes heading={t("rule.follows")}>
        <NamesBox at={["jobs"]} label={t("rule.jobs")} choices={jobChoices(work)} />
        <NamesBox at={["cautions"]} label={t("rule.cautions")} choices={cautionChoices(work)} />
        <Opens />
      </Boxes>
      <RuleAt />
      <Boxes heading={t("rule.rests")}>
        <TextBox at={["answers-to"]} label={t("rule.answers-to")} help={t("rule.answers-to.help")} />
        <TextBox at={["stricter"]} label={t("rule.stricter")} help={t("rule.stricter.help")} />
      </Boxes>
      <section class="band">
        <SwitchBox at={["provisional"]} label={t("rule.provisional")} says={t("rule.provisional.says")} />
      </section>
    </>
  );
}

export const ItemRule = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <RuleForm />
  </ItemForm>
);
