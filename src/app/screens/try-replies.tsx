/** Sample replies to the points of a sheet under work, and facts of the car they are given for. */
import { useState } from "preact/hooks";
import type { Field as FieldDef, Point } from "../../core/sheet/run.js";
import type { Typed } from "../../core/sheet/work.js";
import { Tool } from "../parts/button.js";
import { Disclosure } from "../parts/disclosure.js";
import { Field } from "../parts/field.js";
import { Fold } from "../parts/fold.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { capital, fieldName, placeName, pointName, questionOf, replyWord } from "../state/knowledge.js";
import { keyFor, readingText, type Said, type SaidFacts, type Trial, takes, withSaid } from "../state/sheet-trying.js";
import type { SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-rules.js";
import { unitShown } from "../texts/units.js";

interface RepliesProps {
  readonly trial: Trial;
  readonly work: SheetWork;
  readonly said: Said;
  readonly onSay: (said: Said) => void;
}

export function TryReplies({ trial, work, said, onSay }: RepliesProps) {
  const count = Object.keys(said).length;
  return (
    <section class="band">
      <Fold title={t("try.replies")} count={count} open={count === 0}>
        {work.sheet.points.map((point) => (
          <Disclosure
            key={point.id}
            class="try-point"
            inside={() => <PointReplies {...{ trial, point, said, onSay }} />}
          >
            <span class="row-title">{pointName(trial.known, point.id)}</span>
            <span class="small">{saidAt(trial, point, said)}</span>
          </Disclosure>
        ))}
      </Fold>
      {count > 0 && (
        <div class="acts">
          <Tool words={t("try.clear")} onPress={() => onSay({})} />
        </div>
      )}
    </section>
  );
}

/** What is said of a point, place by place, in its own words. */
function saidAt({ look, known }: Trial, point: Point, said: Said): string {
  const parts = look.tree.ofKind(point.place).flatMap((place) =>
    Object.keys(point.fields).flatMap((field) => {
      const typed = said[keyFor(point, field, place)];
      if (typed === undefined) return [];
      const at = place === "car" ? "" : `${placeName(known, place)}: `;
      return [`${at}${wordsFor(known, point, field, typed)}`];
    }),
  );
  return parts.join("; ");
}

function wordsFor(known: Trial["known"], point: Point, field: string, typed: Typed): string {
  const text = known.points.get(point.id)?.text;
  const one = (value: string | number): string =>
    text && "words" in (point.fields[field] ?? {})
      ? replyWord(text, field, String(value), "technician")
      : String(value);
  if (typeof typed === "boolean") return t(typed ? "app.yes" : "app.no");
  return typeof typed === "object" ? typed.map(one).join(", ") : one(typed);
}

function PointReplies({ trial, point, said, onSay }: Omit<RepliesProps, "work"> & { readonly point: Point }) {
  const places = trial.look.tree.ofKind(point.place);
  const [place, setPlace] = useState(places[0] ?? "car");
  const text = trial.known.points.get(point.id)?.text;
  return (
    <div class="form">
      {text && <p class="small">{questionOf(text, "technician")}</p>}
      {places.length > 1 && (
        <Field
          id={`try-${point.id}-place`}
          kind="select"
          label={t("try.place")}
          value={place}
          options={places.map((value) => ({ value, words: capital(placeName(trial.known, value)) }))}
          onInput={setPlace}
        />
      )}
      {Object.entries(point.fields).map(([name, field]) => {
        const key = keyFor(point, name, place);
        return (
          <FieldReply
            key={key}
            {...{ trial, point, name, field }}
            id={`try-${key}`}
            typed={said[key]}
            takes={(typed) => takes(trial, key, typed)}
            onSay={(typed) => onSay(withSaid(said, key, typed))}
          />
        );
      })}
    </div>
  );
}

interface FieldReplyProps {
  readonly trial: Trial;
  readonly point: Point;
  readonly name: string;
  readonly field: FieldDef;
  readonly id: string;
  readonly typed: Typed | undefined;
  readonly takes: (typed: Typed) => boolean;
  readonly onSay: (typed: Typed | undefined) => void;
}

function FieldReply({ trial, point, name, field, id, typed, takes: isTaken, onSay }: FieldReplyProps) {
  const text = trial.known.points.get(point.id)?.text;
  const label = text ? fieldName(text, name) : name;
  if ("words" in field)
    return (
      <WordsReply
        {...{ label, field, typed, onSay }}
        says={(word) => (text ? replyWord(text, name, word, "technician") : word)}
      />
    );
  if ("yes" in field)
    return (
      <ReplyGrid
        kind="several"
        label={label}
        replies={[true, false].map((yes) => ({
          id: String(yes),
          words: t(yes ? "app.yes" : "app.no"),
          chosen: typed === yes,
        }))}
        onChoose={(chosen, on) => onSay(on ? chosen === "true" : undefined)}
      />
    );
  const unit = "quantity" in field ? unitShown(field.unit) : undefined;
  return (
    <TypedReply
      {...{ id, label, typed }}
      {...(unit === undefined ? {} : { unit })}
      onSay={(written) => {
        const said = typedAs(field, written);
        const fits = said === undefined || isTaken(said);
        if (fits) onSay(said);
        return fits;
      }}
    />
  );
}

/** What was written, as a case writes it; nothing where nothing is written. */
function typedAs(field: FieldDef, written: string): Typed | undefined {
  if (written.trim() === "") return undefined;
  if ("quantity" in field) return readingText(written, field);
  return "count" in field ? Number(written) : written.trim();
}

interface WordsReplyProps extends Pick<FieldReplyProps, "typed" | "onSay"> {
  readonly label: string;
  readonly field: Extract<FieldDef, { words: string[] }>;
  readonly says: (word: string) => string;
}

function WordsReply({ label, field, typed, onSay, says }: WordsReplyProps) {
  const chosen = typeof typed === "object" ? typed.map(String) : typed === undefined ? [] : [String(typed)];
  const next = (word: string, on: boolean): Typed | undefined => {
    const rest = chosen.filter((one) => one !== word);
    if (!on) return rest.length === 0 ? undefined : rest;
    const alone = !field.several || field.exclusive?.includes(word) === true;
    return alone ? word : [...chosen.filter((one) => !field.exclusive?.includes(one)), word];
  };
  return (
    <ReplyGrid
      kind="several"
      label={label}
      replies={field.words.map((id) => ({ id, words: says(id), chosen: chosen.includes(id) }))}
      onChoose={(word, on) => onSay(next(word, on))}
    />
  );
}

interface TypedReplyProps {
  readonly id: string;
  readonly label: string;
  readonly unit?: string;
  readonly typed: Typed | undefined;
  /** Whether it could be taken. */
  readonly onSay: (text: string) => boolean;
}

function TypedReply({ id, label, unit, typed, onSay }: TypedReplyProps) {
  const [text, setText] = useState(typed === undefined ? "" : String(typed));
  const [refused, setRefused] = useState(false);
  return (
    <Field
      id={id}
      kind="text"
      label={label}
      value={text}
      onInput={setText}
      onCommit={(written) => setRefused(!onSay(written))}
      {...(unit === undefined ? {} : { unit })}
      {...(refused ? { problem: t("try.refused") } : {})}
    />
  );
}

interface FactsProps {
  readonly trial: Trial;
  readonly facts: SaidFacts;
  readonly onFacts: (facts: SaidFacts) => void;
}
const UNSAID = "";

export function TryFacts({ trial: { known }, facts, onFacts }: FactsProps) {
  const put = (id: string, value: string | number | boolean | undefined): void => {
    const { [id]: _, ...rest } = facts;
    onFacts(value === undefined ? rest : { ...rest, [id]: value });
  };
  return (
    <section class="band">
      <Fold title={t("try.facts")} count={Object.keys(facts).length} open={false}>
        <div class="form">
          {known.common.facts.map((fact) => {
            const text = known.words.facts[fact.id];
            const now = facts[fact.id];
            const label = text?.name ?? fact.id;
            const words = fact.kind === "yes" ? ["true", "false"] : (fact.words ?? []);
            if (words.length === 0)
              return (
                <Field
                  key={fact.id}
                  id={`fact-${fact.id}`}
                  kind="number"
                  label={label}
                  value={now === undefined ? "" : String(now)}
                  onInput={() => undefined}
                  onCommit={(written) => {
                    const value = Number(written.replace(",", "."));
                    put(fact.id, written.trim() === "" || !Number.isFinite(value) ? undefined : value);
                  }}
                />
              );
            const spoken = (word: string): string =>
              fact.kind === "yes" ? t(word === "true" ? "app.yes" : "app.no") : (text?.words?.[word] ?? word);
            return (
              <Field
                key={fact.id}
                id={`fact-${fact.id}`}
                kind="select"
                label={label}
                value={now === undefined ? UNSAID : String(now)}
                options={[
                  { value: UNSAID, words: t("try.unsaid") },
                  ...words.map((value) => ({ value, words: spoken(value) })),
                ]}
                onInput={(value) =>
                  put(fact.id, value === UNSAID ? undefined : fact.kind === "yes" ? value === "true" : value)
                }
              />
            );
          })}
        </div>
      </Fold>
    </section>
  );
}
