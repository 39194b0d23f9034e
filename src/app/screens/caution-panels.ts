/** From a caution in words to the panel that shows it. */
import type { CautionPanelProps } from "../parts/props-telling.js";
import type { CautionLine } from "../state/cautions-view.js";
import { t } from "../texts/index.js";

export function cautionPanel(
  line: CautionLine,
  form: CautionPanelProps["form"],
  level: CautionPanelProps["level"] = 2,
): CautionPanelProps {
  const say = (label: string, says: string) => (says === "" ? undefined : { label, says });
  const [why, can, todo] = [
    say(t("cautions.why"), [line.why, line.places].filter(Boolean).join(" ")),
    say(t("cautions.can"), line.can),
    say(t("cautions.do"), line.todo),
  ];
  return {
    form,
    signal: line.signal,
    word: line.word,
    not: line.not,
    level,
    ...(why ? { why } : {}),
    ...(can ? { can } : {}),
    ...(todo ? { todo } : {}),
    ...(line.told === undefined ? {} : { told: line.told }),
  };
}
