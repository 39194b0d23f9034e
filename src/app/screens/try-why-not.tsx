/** Of any rule of a sheet under work: what it does, where it holds, and where not, what it waits for. */
import { useState } from "preact/hooks";
import type { Session } from "../../core/assess/index.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { capital, placeName, pointName, ruleSays } from "../state/knowledge.js";
import { sayRule } from "../state/rule-say.js";
import { type Trial, type WhyNot, whyNot } from "../state/sheet-trying.js";
import type { SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-rules.js";
import { useRuleDesk } from "./use-rule-desk.js";

interface WhyNotProps {
  readonly trial: Trial;
  readonly work: SheetWork;
  readonly session: Session;
}
const UNCHOSEN = "";

export function WhyNotBand({ trial, work, session }: WhyNotProps) {
  const { known } = trial;
  const [chosen, setChosen] = useState(UNCHOSEN);
  const desk = useRuleDesk(work);
  const rule = work.sheet.rules.find(({ id }) => id === chosen);
  const places = rule ? whyNot(trial, session, rule) : [];
  return (
    <Band heading={t("try.why-not")}>
      <div class="form">
        <Field
          id="try-rule"
          kind="select"
          label={t("try.rule")}
          value={chosen}
          options={[
            { value: UNCHOSEN, words: t("try.rule.none") },
            ...work.sheet.rules.map(({ id }, index) => ({
              value: id,
              words: `${index + 1}. ${ruleSays(known, id, "technician")}`,
            })),
          ]}
          onInput={setChosen}
        />
        {rule && desk && <p>{sayRule(desk.names, rule, desk.tools.readCondition)}</p>}
        {rule && places.length === 0 && <p class="small">{t("try.not-open")}</p>}
      </div>
      {places.map((one) => (
        <ListRow
          key={one.place}
          title={capital(placeName(known, one.place))}
          second={saysWhy(trial, one)}
          aside={t(`try.is.${one.is}`)}
        />
      ))}
    </Band>
  );
}

function saysWhy({ known }: Trial, { is, waits }: WhyNot): string | undefined {
  if (is !== "unknown") return undefined;
  if (waits.length === 0) return t("try.no-matter");
  const names = waits.map((key) => {
    const fact = /^car@car#\.(.+)$/.exec(key)?.[1];
    if (fact !== undefined) return known.words.facts[fact.replaceAll("_", "-")]?.name ?? fact;
    return pointName(known, key.slice(0, key.indexOf("@")));
  });
  return t("try.waits", { points: [...new Set(names)].join(", ") });
}
