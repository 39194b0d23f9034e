/** One term of a condition, opened: what it asks, where, how, and of which words. Each a plain choice. */
import { useState } from "preact/hooks";
import type { Asked, Term } from "../../core/expr/work.js";
import { GRADES } from "../../core/terms/index.js";
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import {
  hasTwin,
  placesFor,
  type Shape,
  shapeOf,
  shapesOf,
  subjectOf,
  termOf,
  wordsOf,
} from "../state/condition-rows.js";
import { sayPlace } from "../state/condition-say.js";
import { type Choice, calledIn } from "../state/sheet-choices.js";
import { type NamedThing, relationsFrom } from "../state/sheet-names.js";
import { t as shared } from "../texts/index.js";
import { t } from "../texts/sheet-rules.js";
import type { Around } from "./condition-rows.js";
import { Opener, Pick } from "./item-choice.js";
import type { RuleDesk } from "./use-rule-desk.js";

interface TermProps {
  readonly id: string;
  readonly desk: RuleDesk;
  readonly term: Term;
  readonly around: Around;
  readonly onChange: (to: Term) => void;
}

interface NameChoice {
  readonly value: string;
  readonly words: string;
  /** The other sheet it belongs to. */
  readonly says?: string;
  readonly of: Asked;
  readonly thing: NamedThing;
}

/**
 * Everything that can be asked from here: at this place or around it, and where one relation leads to another kind; what
 * other sheets ask stands behind, with their titles.
 */
function nameChoices({ names }: RuleDesk, { scope, at }: Around): readonly NameChoice[] {
  const here = names.at(scope).map((thing): NameChoice => {
    const of = { name: thing.name, at: thing.kind === "" ? "" : at };
    return { value: choiceOf(of), words: thing.words, of, thing };
  });
  const seen = new Set(here.map(({ thing }) => thing.name));
  const led = relationsFrom(names, scope, false).flatMap(({ name, to }) =>
    [...names.things.values()]
      .filter((thing) => thing.kind === to && !seen.has(thing.name))
      .map((thing): NameChoice => {
        seen.add(thing.name);
        const of = { name: thing.name, at: at === "" ? name : `${at}.${name}` };
        return { value: choiceOf(of), words: `${thing.words}, ${sayPlace(of.at)}`, of, thing };
      }),
  );
  const isOther = ({ thing }: NameChoice): boolean => names.from(thing.name) !== undefined;
  const all = [...here, ...led];
  return [
    ...all.filter((one) => !isOther(one)),
    ...all.filter(isOther).map((one) => ({ ...one, says: names.from(one.thing.name) ?? "" })),
  ];
}
const choiceOf = ({ name, at }: Asked): string => (at === "" ? name : `${at}.${name}`);

export function ConditionTerm({ id, desk, term, around, onChange }: TermProps) {
  const { names } = desk;
  const subject = subjectOf(term);
  const shape = shapeOf(term);
  const thing = subject && names.things.get(subject.name);
  if (!subject || !thing || shape === undefined) return <p class="remark">{t("cond.row.text")}</p>;
  const choices = nameChoices(desk, around);
  const now = choices.find(({ of }) => of.name === subject.name);
  const shapes = (of: NamedThing): readonly Shape[] =>
    shapesOf(of.type, {
      twin: hasTwin(names, around.scope, of.kind),
      silence: around.silence,
      fact: of.kind === "",
    });
  const pick = (value: string): void => {
    const chosen = choices.find((one) => one.value === value);
    const [first] = chosen ? shapes(chosen.thing) : [];
    if (!chosen || first === undefined) return;
    const same = shapes(chosen.thing).includes(shape) ? shape : first;
    onChange(termOf(chosen.of, chosen.thing.type, same, term));
  };
  const put = (of: Asked, to: Shape = shape): void => onChange(termOf(of, thing.type, to, term));
  const offered = shapes(thing);
  return (
    <div class="form">
      <Name
        id={`${id}-name`}
        value={now?.value ?? choiceOf(subject)}
        choices={now ? choices : [{ value: choiceOf(subject), words: thing.words }, ...choices]}
        onPick={pick}
      />
      <Where {...{ id, desk, around, subject, thing, shape }} onChange={put} />
      <Field
        id={`${id}-shape`}
        kind="select"
        label={t("cond.shape")}
        value={shape}
        options={(offered.includes(shape) ? offered : [shape, ...offered]).map((value) => ({
          value,
          words: t(`cond.shape.${value}`),
        }))}
        onInput={(value) => {
          const to = offered.find((one) => one === value);
          if (to) put(subject, to);
        }}
      />
      <Chosen {...{ id, desk, term, thing, onChange }} />
    </div>
  );
}

interface NameProps {
  readonly id: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onPick: (value: string) => void;
}

/** What is asked, found by a word: all the sheets at hand offer hundreds. */
function Name({ id, value, choices, onPick }: NameProps) {
  const [open, setOpen] = useState(false);
  const close = (): void => setOpen(false);
  return (
    <Opener id={id} label={t("cond.name")} says={calledIn(choices, value)} onPress={() => setOpen(true)}>
      {open && (
        <Pick
          title={t("cond.name")}
          kind="one"
          choices={choices}
          chosen={[value]}
          onChoose={(next) => {
            onPick(next);
            close();
          }}
          onClose={close}
        />
      )}
    </Opener>
  );
}

/** Shapes that speak of what was there the last time too. */
const ALSO_LAST: ReadonlySet<Shape> = new Set([
  "is",
  "is-not",
  "one-of",
  "none-of",
  "includes",
  "lacks",
  "yes",
  "no",
  "==",
]);

interface WhereProps extends Pick<TermProps, "id" | "desk" | "around"> {
  readonly subject: Asked;
  readonly thing: NamedThing;
  readonly shape: Shape;
  readonly onChange: (of: Asked) => void;
}

function Where({ id, desk: { names }, around, subject, thing, shape, onChange }: WhereProps) {
  if (thing.kind === "") return null;
  const there = placesFor(names, around.scope, thing.kind, around.at).map(({ at, relation }) => ({
    value: at,
    words: relation === "" ? t(around.at === "" ? "cond.here" : "cond.there") : sayPlace(at),
  }));
  const outside = around.at === "" ? [] : [{ value: "", words: t("cond.here") }];
  const known = [...there, ...outside].some(({ value }) => value === subject.at);
  const options = [...(known ? [] : [{ value: subject.at, words: sayPlace(subject.at) }]), ...there, ...outside];
  return (
    <>
      {options.length > 1 && (
        <Field
          id={`${id}-at`}
          kind="select"
          label={t("cond.where")}
          value={subject.at}
          options={options}
          onInput={(at) => onChange({ ...subject, at })}
        />
      )}
      {ALSO_LAST.has(shape) && thing.type.is !== "reading" && (
        <Field
          id={`${id}-when`}
          kind="select"
          label={t("cond.when")}
          value={subject.when === "last" ? "last" : "now"}
          options={[
            { value: "now", words: t("cond.when.now") },
            { value: "last", words: t("cond.when.last") },
          ]}
          onInput={(when) => {
            const { name, at } = subject;
            onChange(when === "last" ? { name, at, when } : { name, at });
          }}
        />
      )}
    </>
  );
}

/** The words, grade or figure a term compares with. */
function Chosen({
  id,
  desk: { names },
  term,
  thing,
  onChange,
}: Omit<TermProps, "around"> & { readonly thing: NamedThing }) {
  const words = wordsOf(thing.type).map((value) => ({ value, words: names.spoken.word(thing.name, value) }));
  if (term.is === "word" || term.is === "includes")
    return (
      <Field
        id={`${id}-word`}
        kind="select"
        label={t("cond.word")}
        value={term.word}
        options={words}
        onInput={(word) => onChange({ ...term, word })}
      />
    );
  if (term.is === "one-of")
    return (
      <ReplyGrid
        kind="several"
        label={t("cond.words")}
        replies={words.map(({ value, words: says }) => ({
          id: value,
          words: says,
          chosen: term.words.includes(value),
        }))}
        onChoose={(word, on) => {
          const to = on ? [...term.words, word] : term.words.filter((one) => one !== word);
          if (to.length > 0) onChange({ ...term, words: to });
        }}
      />
    );
  if (term.is === "band" && term.sign === ">=")
    return (
      <Field
        id={`${id}-grade`}
        kind="select"
        label={t("cond.grade")}
        value={term.grade}
        options={GRADES.map((value) => ({ value, words: shared(`grade.${value}`) }))}
        onInput={(value) => onChange({ ...term, grade: GRADES.find((one) => one === value) ?? term.grade })}
      />
    );
  if (term.is === "figure" && typeof term.than === "number")
    return (
      <Field
        id={`${id}-figure`}
        kind="number"
        label={t("cond.figure")}
        value={String(term.than)}
        onInput={() => undefined}
        onCommit={(text) => {
          const than = Number(text.replace(",", "."));
          if (text.trim() !== "" && Number.isFinite(than)) onChange({ ...term, than });
        }}
      />
    );
  return null;
}
