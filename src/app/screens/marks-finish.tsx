/** What a mark needs beside its spots: words, or how long the known length is. */

import { MARK_WORDS_AT_MOST, type MarkTool } from "../../core/record/index.js";
import { Field } from "../parts/field.js";
import { UnitSwitch } from "../parts/switch.js";
import { t } from "../texts/marks.js";
import { unitShown } from "../texts/units.js";

const UNITS = ["mm", "cm", "[in_i]"] as const;

export interface Typed {
  readonly words: string;
  readonly value: string;
  readonly unit: string;
}
export const NOTHING_TYPED: Typed = { words: "", value: "", unit: "mm" };

interface MarkFinishProps {
  readonly tool: MarkTool;
  readonly typed: Typed;
  readonly onTyped: (typed: Typed) => void;
  readonly problem: string | undefined;
}

export function MarkFinish({ tool, typed, onTyped, problem }: MarkFinishProps) {
  if (tool === "words")
    return (
      <Field
        id="mark-words"
        kind="text"
        label={t("marks.words", { n: MARK_WORDS_AT_MOST })}
        value={typed.words}
        maxLength={MARK_WORDS_AT_MOST}
        onInput={(words) => onTyped({ ...typed, words })}
      />
    );
  if (tool !== "scale") return null;
  return (
    <>
      <Field
        id="mark-known"
        kind="number"
        label={t("marks.known")}
        value={typed.value}
        maxLength={20}
        problem={problem}
        onInput={(value) => onTyped({ ...typed, value })}
      />
      <UnitSwitch
        label={t("marks.known.unit")}
        choices={UNITS.map((id) => ({ id, words: unitShown(id) }))}
        chosen={typed.unit}
        onChoose={(unit) => onTyped({ ...typed, unit })}
      />
    </>
  );
}
