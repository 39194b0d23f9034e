/** The figure being typed, its unit and gauge, and the keypad. Outside the usual window it asks before keeping. */
import { Keypad } from "../parts/keypad.js";
import { Notice } from "../parts/notice.js";
import { GaugeLine, ReadingEntry } from "../parts/reading-entry.js";
import { UnitSwitch } from "../parts/switch.js";
import { type ReadingField, unitsOffered, windowIn } from "../state/reading-view.js";
import { problemText } from "../texts/problems.js";
import { figure, rounded, t } from "../texts/reading.js";
import { unitShown } from "../texts/units.js";
import type { ReadingState } from "./use-reading.js";

interface ReadingKeysProps {
  readonly name: string;
  readonly field: ReadingField;
  readonly state: ReadingState;
  /** Set-up error of the point in the unit shown. */
  readonly setUp: number | undefined;
  readonly onGauge: () => void;
  readonly onPhoto: () => void;
  /** A result beside a number, in words. */
  readonly resultWords: (id: string) => string;
  /** The next reading of the same round, once this one stands. */
  readonly next?: { readonly words: string; readonly onPress: () => void };
  readonly onDone: () => void;
}

/** Digits a gauge's figures are written with at most, also after conversion. */
const GAUGE_DIGITS = 4;
const WINDOW_DIGITS = 3;
/** Results beside a number the keypad has room for. */
const MOST_RESULTS = 2;

/** `0.22 mm`: with the unit, so that a figure is never kept under another than was meant. */
const entryText = ({ text, unit }: { readonly text: string; readonly unit: string }): string =>
  `${figure(text)} ${unitShown(unit)}`;

/** What is said of the figure while it is typed. */
function entrySays({ entry, relabelled, replaces, value }: ReadingState): string | undefined {
  if (entry.is !== "reading") return undefined;
  const lines = [
    ...(relabelled ? [t("reading.relabelled", { value: entryText(entry.reading) })] : []),
    ...(value && replaces !== undefined
      ? [
          t("reading.replaces", {
            n: replaces + 1,
            was: entryText({ text: value.values[replaces] ?? "", unit: value.unit }),
          }),
        ]
      : []),
  ];
  return lines.length > 0 ? lines.join(" ") : undefined;
}

function gaugeText({ entering: { gauge, unit } }: ReadingState, setUp: number | undefined): string {
  if (!gauge) return t("reading.no-gauge");
  const figures = {
    resolution: rounded(gauge.resolution, GAUGE_DIGITS),
    error: rounded(gauge.error, GAUGE_DIGITS),
    unit: unitShown(unit),
  };
  return setUp === undefined
    ? t("reading.gauge", figures)
    : t("reading.gauge.set-up", { ...figures, setup: rounded(setUp, GAUGE_DIGITS) });
}

function AskAgain({ field, state }: Pick<ReadingKeysProps, "field" | "state">) {
  const { entering, entry } = state;
  if (!state.asking || entry.is !== "reading") return null;
  const [from, to] = windowIn(field, entering.unit);
  return (
    <Notice
      kind="plain"
      title={t("reading.odd.title", { value: figure(entry.reading.text), unit: unitShown(entry.reading.unit) })}
      says={t("reading.odd.says", {
        from: rounded(from, WINDOW_DIGITS),
        to: rounded(to, WINDOW_DIGITS),
        unit: unitShown(entering.unit),
      })}
      action={{ words: t("reading.odd.keep", { value: entryText(entry.reading) }), onPress: state.accept }}
    />
  );
}

export function ReadingKeys(props: ReadingKeysProps) {
  const { name, field, state, setUp, onGauge, onPhoto, resultWords, next, onDone } = props;
  const { entering, entry } = state;
  const { unit, typed } = entering;
  const isDone = (state.value?.values.length ?? 0) >= state.shots && typed === "";
  const words =
    entry.is === "reading" ? t("reading.keep", { value: entryText(entry.reading) }) : t("reading.keep-empty");
  const keep = state.asking
    ? { words: t("reading.odd.again"), onPress: state.change }
    : { words, disabled: entry.is !== "reading" || state.closed, onPress: state.keep };
  const says = entrySays(state);
  return (
    <>
      <ReadingEntry
        label={name}
        value={typed}
        onValue={state.type}
        onKeep={state.keep}
        {...(entry.is === "refused" ? { problem: problemText(entry.problem) } : {})}
        {...(says === undefined ? {} : { says })}
      >
        <UnitSwitch label={t("reading.unit")} choices={unitsOffered(field)} chosen={unit} onChoose={state.setUnit} />
      </ReadingEntry>
      {!isDone && (
        <GaugeLine words={gaugeText(state, setUp)} action={{ words: t("reading.change-gauge"), onPress: onGauge }} />
      )}
      <Keypad
        label={t("reading.keypad")}
        value={typed}
        onValue={state.type}
        decimal={entering.comma ? "," : "."}
        minus={field.window[0] < 0}
        fraction={unit === "[in_i]"}
        words={{
          rubOut: t("reading.rub-out"),
          decimal: t("reading.point-key"),
          minus: t("reading.minus-key"),
          fraction: t("reading.fraction-key"),
        }}
        extra={(field.results ?? []).slice(0, MOST_RESULTS).map((id) => ({
          id,
          words: resultWords(id),
          onPress: () => state.keepText(id, unit),
        }))}
        camera={{ words: t("round.photo"), onPress: onPhoto }}
        keep={isDone ? (next ?? { words: t("reading.done"), onPress: onDone }) : keep}
      >
        <AskAgain field={field} state={state} />
      </Keypad>
    </>
  );
}
