/** A condition of a sheet under work: put together from rows, or written as text. What it says is judged elsewhere. */
import { useMemo, useState } from "preact/hooks";
import { type Condition, writeCondition } from "../../core/expr/work.js";
import { Tool } from "../parts/button.js";
import { Switch } from "../parts/switch.js";
import { sayCondition } from "../state/condition-say.js";
import type { ItemTold, SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-rules.js";
import { ConditionRows } from "./condition-rows.js";
import { ConditionText } from "./condition-text.js";
import { type RuleDesk, useRuleDesk } from "./use-rule-desk.js";

interface ConditionFieldProps {
  readonly id: string;
  readonly label: string;
  /** CEL text; empty where there is none yet. */
  readonly value: string;
  /** Kind of place it is asked at. */
  readonly scope: string;
  readonly work: SheetWork;
  readonly told: readonly ItemTold[];
  readonly onChange: (cel: string) => void;
  /** There may be none. */
  readonly optional?: boolean;
  /** Of a rule that rests on silence. */
  readonly provisional?: boolean;
}

export function ConditionField(props: ConditionFieldProps) {
  const desk = useRuleDesk(props.work);
  return (
    <section class="condition" aria-labelledby={`${props.id}-label`}>
      <h3 id={`${props.id}-label`}>{props.label}</h3>
      {desk ? <Ready {...props} desk={desk} /> : <p class="remark">{t("app.opening")}</p>}
    </section>
  );
}

const NONE: Condition = { join: "all", terms: [] };

function Ready({
  id,
  value,
  scope,
  told,
  onChange,
  optional,
  provisional,
  desk,
}: ConditionFieldProps & { desk: RuleDesk }) {
  const read = useMemo(() => (value.trim() === "" ? NONE : desk.tools.readCondition(value)), [desk.tools, value]);
  const [asText, setAsText] = useState(false);
  // How one row alone would be joined to the next is no part of the text.
  const [rows, setRows] = useState<{ readonly cel: string; readonly is: Condition }>();
  const shown = rows?.cel === value ? rows.is : read;
  const put = (to: Condition): void => {
    const cel = to.terms.length === 0 ? "" : writeCondition(to);
    setRows({ cel, is: to });
    if (cel !== value) onChange(cel);
  };
  const textOnly = shown === undefined;
  return (
    <>
      {!asText && shown && (
        <>
          <p class="remark">
            {shown.terms.length === 0 ? t(optional ? "cond.always" : "cond.none") : saysOf(desk, shown)}
          </p>
          <ConditionRows
            id={id}
            desk={desk}
            condition={shown}
            around={{ scope, at: "", depth: 0, silence: provisional === true }}
            onChange={put}
          />
          {told.map(({ says }) => (
            <p class="problem" key={says}>
              {says}
            </p>
          ))}
        </>
      )}
      {(asText || textOnly) && (
        <ConditionText
          id={id}
          desk={desk}
          value={value}
          use={{ scope, findings: true, ...(provisional ? { provisional } : {}) }}
          told={told}
          onChange={onChange}
        />
      )}
      {textOnly ? (
        <p class="remark">{t("cond.text-only")}</p>
      ) : (
        <Switch
          id={`${id}-as-text`}
          label={t("cond.as-text")}
          on={asText}
          onChange={setAsText}
          words={{ on: t("app.yes"), off: t("app.no") }}
        />
      )}
      {optional && value !== "" && (
        <div class="acts">
          <Tool words={t("cond.away")} onPress={() => onChange("")} />
        </div>
      )}
    </>
  );
}

const saysOf = ({ names }: RuleDesk, condition: Condition): string =>
  t("cond.says", { says: sayCondition(names, condition) });
