/** What a figure holds for and where it comes from: the boxes that go with whose it is and how it came. */
import { useRef } from "preact/hooks";
import { FIGURE_TRUST, FIGURE_WAYS } from "../../core/record/index.js";
import { Field } from "../parts/field.js";
import { Fold } from "../parts/fold.js";
import { BOXES_OF, type FigureBox, type FigureForm, waysOf, withTrust } from "../state/figure-form.js";
import { t } from "../texts/limits.js";

export interface BoxesProps {
  readonly form: FigureForm;
  readonly set: (part: Partial<FigureForm>) => void;
  /** What is wrong with a box, once keeping was tried. */
  readonly wrong: (box: FigureBox) => { readonly problem?: string };
}

const OFFERED = ["cold", "hot", "dry", "oiled", "new", "run-in"] as const;

/** Free words, with those offered that are said most; pressed again, one is taken out. */
export function Condition({ form, set, wrong }: BoxesProps) {
  const said = form.condition
    .split(",")
    .map((one) => one.trim())
    .filter(Boolean);
  const press = (words: string): void =>
    set({ condition: (said.includes(words) ? said.filter((one) => one !== words) : [...said, words]).join(", ") });
  return (
    <>
      <Field
        id="figure-condition"
        kind="text"
        label={t("figure.condition")}
        help={t("figure.condition.help")}
        value={form.condition}
        onInput={(condition) => set({ condition })}
        {...wrong("condition")}
      />
      <fieldset class="quick" aria-label={t("figure.condition.offered")}>
        {OFFERED.map((one) => {
          const words = t(`figure.condition.${one}`);
          return (
            <button
              key={one}
              class="tool plain"
              type="button"
              aria-pressed={said.includes(words)}
              onClick={() => press(words)}
            >
              {words}
            </button>
          );
        })}
      </fieldset>
    </>
  );
}

const FOR = ["build", "engine", "from", "to"] as const;

export function HoldsFor({ form, set, wrong }: BoxesProps) {
  const filled = FOR.filter((box) => form[box].trim() !== "").length;
  // Opened for what is wrong inside, it stays open while that is mended.
  const opened = useRef(false);
  opened.current ||= FOR.some((box) => wrong(box).problem !== undefined);
  return (
    <Fold title={t("figure.for")} count={filled === 0 ? "" : filled} open={opened.current}>
      {FOR.map((box) => (
        <Field
          key={box}
          id={`figure-${box}`}
          kind="text"
          label={t(`figure.for.${box}`)}
          value={form[box]}
          onInput={(text) => set({ [box]: text })}
          {...wrong(box)}
        />
      ))}
    </Fold>
  );
}

type SourceBox = (typeof BOXES_OF)["book"][number];

/** What a box is called where it means something else with each way. */
function labelOf(form: FigureForm, box: SourceBox): string {
  const { way } = form;
  if (box === "title")
    return t(
      way === "stamped" ? "figure.title.stamped" : way === "measured" ? "figure.title.measured" : "figure.title.book",
    );
  if (box === "who")
    return t(way === "word" ? "figure.who.word" : way === "measured" ? "figure.who.measured" : "figure.who.letter");
  return t(`figure.${box}`);
}

export function Source({ form, set, wrong, onForm }: BoxesProps & { readonly onForm: (form: FigureForm) => void }) {
  const ways = waysOf(form.trust);
  const choose = { value: "", words: t("figure.choose") };
  return (
    <fieldset class="bare-group" aria-label={t("figure.source")}>
      <Field
        id="figure-trust"
        kind="select"
        label={t("figure.trust")}
        help={t("figure.trust.help")}
        value={form.trust}
        onInput={(text) => onForm(withTrust(form, text))}
        options={[
          ...(form.trust === "" ? [choose] : []),
          ...FIGURE_TRUST.map((value, at) => ({ value, words: `${at + 1}. ${t(`figure.trust.${value}`)}` })),
        ]}
        required
        {...wrong("trust")}
      />
      {form.trust !== "" && ways.length > 1 && (
        <Field
          id="figure-way"
          kind="select"
          label={t("figure.way")}
          value={form.way}
          onInput={(text) => set({ way: FIGURE_WAYS.find((one) => one === text) ?? "" })}
          options={[
            ...(form.way === "" ? [choose] : []),
            ...ways.map((value) => ({ value, words: t(`figure.way.${value}`) })),
          ]}
          required
          {...wrong("way")}
        />
      )}
      {form.way !== "" &&
        BOXES_OF[form.way].map((box) => (
          <Field
            key={box}
            id={`figure-${box}`}
            kind={box === "on" ? "date" : "text"}
            label={labelOf(form, box)}
            value={form[box]}
            onInput={(text) => set({ [box]: text })}
            {...wrong(box)}
          />
        ))}
    </fieldset>
  );
}
