/** What a rule does that finds no fault, and where it concludes when that is not where it stands. */
import { Tool } from "../parts/button.js";
import { faultChoices, jobChoices, kindChoices, pointChoices } from "../state/sheet-choices.js";
import { entriesAt, textAt, valueAt, withAt } from "../state/sheet-forms.js";
import { relationsFrom } from "../state/sheet-names.js";
import { relationWords } from "../texts/relations.js";
import { t } from "../texts/sheet-rules.js";
import { Boxes, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { ConditionField } from "./item-condition.js";
import { useRuleDesk } from "./use-rule-desk.js";

const EFFECTS = ["finding", "raise", "lower-sure", "not-checked", "discard-reading", "order", "open"] as const;
/** What an effect holds before anything is chosen. */
const EMPTY = {
  finding: "finding",
  raise: { raise: "" },
  "lower-sure": { "lower-sure": [] },
  "not-checked": { "not-checked": [] },
  "discard-reading": { "discard-reading": "" },
  order: { order: { before: "", after: "" } },
  open: { open: [] },
} as const satisfies Readonly<Record<(typeof EFFECTS)[number], unknown>>;

export function RuleEffect() {
  const { is, work, change } = useItem();
  const now = EFFECTS.find(
    (one) => one === textAt(is, ["effect"]) || entriesAt(is, ["effect"]).some(([key]) => key === one),
  );
  return (
    <>
      <ChoiceBox
        at={["effect"]}
        label={t("rule.effect")}
        value={now ?? ""}
        choices={EFFECTS.map((value) => ({ value, words: t(`rule.effect.${value}`) }))}
        onPut={(value) => {
          const to = EFFECTS.find((one) => one === value);
          if (to) change((item) => withAt(item, ["effect"], EMPTY[to]));
        }}
        wanted
      />
      {now === "raise" && (
        <ChoiceBox at={["effect", "raise"]} label={t("rule.fault")} choices={faultChoices(work)} wanted />
      )}
      {(now === "lower-sure" || now === "not-checked" || now === "open") && (
        <NamesBox at={["effect", now]} label={t("rule.effect.points")} choices={pointChoices(work)} kept />
      )}
      {now === "discard-reading" && (
        <ChoiceBox at={["effect", now]} label={t("rule.effect.reading")} choices={pointChoices(work)} wanted />
      )}
      {now === "order" && (
        <>
          <ChoiceBox
            at={["effect", "order", "before"]}
            label={t("rule.effect.before")}
            choices={jobChoices(work)}
            wanted
          />
          <ChoiceBox
            at={["effect", "order", "after"]}
            label={t("rule.effect.after")}
            choices={jobChoices(work)}
            wanted
          />
        </>
      )}
    </>
  );
}

const HERE = "";
const EACH = "each";

/** Here, where a relation leads, or at each place of a kind where something holds. */
export function RuleAt() {
  const { is, work, told, change } = useItem();
  const desk = useRuleDesk(work);
  const scope = textAt(is, ["scope"]) || "car";
  const isEach = typeof valueAt(is, ["at"]) === "object";
  const kind = textAt(is, ["at", "each"]);
  const relations = desk ? relationsFrom(desk.names, scope, false) : [];
  return (
    <>
      <Boxes heading={t("rule.at")}>
        <ChoiceBox
          at={["at"]}
          label={t("rule.at.where")}
          value={isEach ? EACH : textAt(is, ["at"])}
          none={t("rule.at.here")}
          choices={[
            ...relations.map(({ name }) => ({
              value: name,
              words: t("rule.at.relation", { name: relationWords(name) }),
            })),
            { value: EACH, words: t("rule.at.each") },
          ]}
          onPut={(value) =>
            change((item) => {
              if (value !== EACH) return withAt(item, ["at"], value === HERE ? undefined : value);
              return withAt(item, ["at"], { each: "corner", where: "", else: scope });
            })
          }
        />
        {isEach && (
          <>
            <ChoiceBox at={["at", "each"]} label={t("rule.at.kind")} choices={kindChoices(work)} wanted />
            <ChoiceBox
              at={["at", "else"]}
              label={t("rule.at.else")}
              choices={[
                { value: scope, words: t("rule.at.else.here") },
                ...relations.map(({ name }) => ({
                  value: name,
                  words: t("rule.at.relation", { name: relationWords(name) }),
                })),
              ]}
              wanted
            />
          </>
        )}
      </Boxes>
      {isEach && (
        <ConditionField
          id="rule-at-where"
          label={t("rule.at.condition")}
          value={textAt(is, ["at", "where"])}
          scope={kind}
          work={work}
          told={told.filter(({ about }) => about?.inside[0] === "at" && about.inside[1] === "where")}
          onChange={(cel) => change((item) => withAt(item, ["at", "where"], cel))}
        />
      )}
      {isEach && (
        <div class="acts">
          <Tool words={t("rule.at.away")} onPress={() => change((item) => withAt(item, ["at"], undefined))} />
        </div>
      )}
    </>
  );
}
