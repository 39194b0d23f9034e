/** A condition as rows that are read and, opened, changed: each a term, a group of its own or a look at several places. */
import { useState } from "preact/hooks";
import { type Condition, EACH, EACH_WITHIN, type PlaceList, type Term } from "../../core/expr/work.js";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { UnitSwitch } from "../parts/switch.js";
import { firstTerm, withTerm } from "../state/condition-rows.js";
import { sayTerm } from "../state/condition-say.js";
import { kindWords, relationsFrom } from "../state/sheet-names.js";
import { relationWords } from "../texts/relations.js";
import { t } from "../texts/sheet-rules.js";
import { ConditionTerm } from "./condition-term.js";
import type { RuleDesk } from "./use-rule-desk.js";

/** Where rows stand: the kind of place they are asked at, what a name there begins with, how deep inside. */
export interface Around {
  readonly scope: string;
  readonly at: string;
  readonly depth: number;
  readonly silence: boolean;
}

interface RowsProps {
  readonly id: string;
  readonly desk: RuleDesk;
  readonly condition: Condition;
  readonly around: Around;
  readonly onChange: (to: Condition) => void;
}
/** Rows inside rows: a group within a group; deeper is written as text. */
const DEEPEST = 2;

export function ConditionRows({ id, desk, condition, around, onChange }: RowsProps) {
  const [open, setOpen] = useState<number>();
  const { terms } = condition;
  const add = (term: Term | undefined): void => {
    if (!term) return;
    onChange({ ...condition, terms: [...terms, term] });
    setOpen(terms.length);
  };
  const first = firstTerm(desk.names, around.scope, around.at);
  const list = listsFor(desk, around)[0];
  return (
    <div class="term-rows">
      {terms.length > 1 && <Join condition={condition} onChange={onChange} />}
      <ol>
        {terms.map((term, index) => (
          <li key={index}>
            <button
              type="button"
              class="discloses term"
              aria-expanded={open === index}
              aria-controls={`${id}-${index}`}
              onClick={() => setOpen(open === index ? undefined : index)}
            >
              {sayTerm(desk.names, term)}
            </button>
            <div id={`${id}-${index}`} class="term-open" hidden={open !== index}>
              {open === index && (
                <>
                  <Opened
                    id={`${id}-${index}`}
                    {...{ desk, term, around }}
                    onChange={(to) => onChange(withTerm(condition, index, to))}
                  />
                  <Tool
                    words={t("cond.row.away")}
                    onPress={() => {
                      setOpen(undefined);
                      onChange(withTerm(condition, index, undefined));
                    }}
                  />
                </>
              )}
            </div>
          </li>
        ))}
      </ol>
      <div class="acts">
        <Tool words={t("cond.row.add")} disabled={first === undefined} onPress={() => add(first)} />
        {around.depth < DEEPEST && terms.length > 0 && (
          <Tool
            words={t("cond.group.add")}
            onPress={() => add(first && { is: "group", hold: { join: other(condition), terms: [first, first] } })}
          />
        )}
        {around.depth < DEEPEST && list && around.at !== EACH_WITHIN && (
          <Tool
            words={t("cond.places.add")}
            onPress={() => add({ is: "places", list: list.is, every: false, hold: null })}
          />
        )}
      </div>
    </div>
  );
}

const other = ({ join }: Condition): "all" | "any" => (join === "any" ? "all" : "any");

function Join({ condition, onChange }: Pick<RowsProps, "condition" | "onChange">) {
  const { join } = condition;
  const count = typeof join === "number" ? join : undefined;
  return (
    <UnitSwitch
      label={t("cond.join")}
      choices={[
        { id: "all", words: t("cond.join.all") },
        { id: "any", words: t("cond.join.any") },
        ...(count === undefined ? [] : [{ id: "count", words: t("cond.join.count", { n: count }) }]),
      ]}
      chosen={count === undefined ? String(join) : "count"}
      onChoose={(id) => (id === "all" || id === "any") && onChange({ ...condition, join: id })}
    />
  );
}

interface OpenedProps {
  readonly id: string;
  readonly desk: RuleDesk;
  readonly term: Term;
  readonly around: Around;
  readonly onChange: (to: Term) => void;
}

function Opened({ id, desk, term, around, onChange }: OpenedProps) {
  if (term.is === "group")
    return (
      <ConditionRows
        id={id}
        desk={desk}
        condition={term.hold}
        around={{ ...around, depth: around.depth + 1 }}
        onChange={(hold) => hold.terms.length > 0 && onChange({ ...term, hold })}
      />
    );
  if (term.is === "places") return <OverPlaces {...{ id, desk, term, around, onChange }} />;
  return <ConditionTerm {...{ id, desk, term, around, onChange }} />;
}

interface ListChoice {
  readonly value: string;
  readonly words: string;
  readonly is: PlaceList;
  readonly kind: string;
}

/** Places a row can go through: all of one kind, and those a relation names. */
function listsFor({ names }: RuleDesk, { scope, at }: Around): readonly ListChoice[] {
  const kinds = Object.keys(names.declared.kinds)
    .filter((kind) => kind !== "car" && names.at(kind).some((thing) => thing.kind === kind))
    .map(
      (kind): ListChoice => ({
        value: `kind ${kind}`,
        words: t("cond.list.kind", { kind: kindWords(kind) }),
        is: { kind },
        kind,
      }),
    );
  const related = relationsFrom(names, scope, true).map(({ name, to }): ListChoice => {
    const relation = at === "" ? name : `${at}.${name}`;
    return {
      value: `rel ${relation}`,
      words: t("cond.list.relation", { name: relationWords(name), kind: kindWords(to) }),
      is: { relation },
      kind: to,
    };
  });
  return [...related, ...kinds];
}

const EMPTY: Condition = { join: "all", terms: [] };

function OverPlaces({
  id,
  desk,
  term,
  around,
  onChange,
}: Omit<OpenedProps, "term"> & { readonly term: Extract<Term, { is: "places" }> }) {
  const lists = listsFor(desk, around);
  const value = "kind" in term.list ? `kind ${term.list.kind}` : `rel ${term.list.relation}`;
  const chosen = lists.find((one) => one.value === value);
  const inside = around.at === EACH ? EACH_WITHIN : EACH;
  return (
    <>
      <Field
        id={`${id}-list`}
        kind="select"
        label={t("cond.list")}
        value={value}
        options={[...(chosen ? [] : [{ value, words: value }]), ...lists]}
        onInput={(next) => {
          const list = lists.find((one) => one.value === next);
          if (list) onChange({ ...term, list: list.is });
        }}
      />
      <UnitSwitch
        label={t("cond.every")}
        choices={[
          { id: "some", words: t("cond.every.some") },
          { id: "every", words: t("cond.every.every") },
        ]}
        chosen={term.every ? "every" : "some"}
        onChoose={(next) => onChange({ ...term, every: next === "every" })}
      />
      {chosen && (
        <ConditionRows
          id={id}
          desk={desk}
          condition={term.hold ?? EMPTY}
          around={{ ...around, scope: chosen.kind, at: inside, depth: around.depth + 1 }}
          onChange={(hold) => onChange({ ...term, hold: hold.terms.length === 0 ? null : hold })}
        />
      )}
    </>
  );
}
