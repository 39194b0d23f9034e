/** What is known of a part, entered: what and how many, its price, where it comes from, with what it is bought. */
import { useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { DayEntry } from "../parts/day-entry.js";
import { Field } from "../parts/field.js";
import { Notice } from "../parts/notice.js";
import type { ThreeFigures, ThreeTexts } from "../parts/props-planning.js";
import { Sheet } from "../parts/sheet.js";
import { ThreeEntry } from "../parts/three-entry.js";
import { useApp } from "../state/app.js";
import { daysGone } from "../state/day-sums.js";
import type { Currency } from "../state/money-words.js";
import { changeOf, fromForm, mendedFigures, moneyTyped, oddIn, typedCount } from "../state/part-figures.js";
import { planPart } from "../state/plan-acts.js";
import { last } from "../state/plan-input.js";
import { type PlannedPart, partsOf } from "../state/plan-part-view.js";
import { to } from "../state/routes.js";
import { dayWords } from "../texts/days.js";
import { decimalComma } from "../texts/index.js";
import { t } from "../texts/plan-parts.js";
import type { OnPlan } from "./on-plan.js";
import { threeWords } from "./three-words.js";

interface OverPart {
  readonly on: OnPlan;
  readonly part: PlannedPart;
  readonly onClose: () => void;
}

/** Keeps a change of what is known, and closes. */
function useKeep({ on, part, onClose }: OverPart) {
  const { journal } = useApp();
  return (change: Parameters<typeof mendedFigures>[1]): void => {
    void planPart(journal, on.stream, part.at, mendedFigures(part, change));
    onClose();
  };
}

function WhatSheet(over: OverPart) {
  const { part, onClose } = over;
  const keep = useKeep(over);
  const [name, setName] = useState(part.name);
  const [count, setCount] = useState(String(part.work.count));
  const pieces = typedCount(count, 1);
  const isOdd = pieces === null || pieces === undefined;
  const typed = name.trim();
  const press = (): void => {
    if (isOdd || typed === "") return;
    keep({ count: pieces, ...(typed === part.name ? {} : { name: typed }) });
  };
  return (
    <Sheet
      open
      title={t("one-part.name")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={press} disabled={isOdd || typed === ""} />}
    >
      <Field
        id="part-name"
        kind="text"
        label={t("one-part.name")}
        value={name}
        onInput={setName}
        {...(typed === "" ? { problem: t("one-part.name.needed") } : {})}
      />
      <Field
        id="part-count"
        kind="number"
        label={t("one-part.count")}
        value={count}
        onInput={setCount}
        {...(isOdd ? { problem: t("one-part.count.odd") } : {})}
      />
    </Sheet>
  );
}

function Price({ currency, ...over }: OverPart & { readonly currency: Currency }) {
  const { on, part } = over;
  const keep = useKeep(over);
  const [low, likely, high] = part.work.price ?? [];
  const [values, setValues] = useState<ThreeTexts>([
    moneyTyped(low, currency),
    moneyTyped(likely, currency),
    moneyTyped(high, currency),
  ]);
  // A price is of the day it was asked for: of today, unless another day is said afterwards.
  const press = (price: ThreeFigures): void => keep({ price, pricedOn: on.input.today });
  return (
    <ThreeEntry
      label={t("one-part.price.of", { part: part.name })}
      kind={{ of: "money", digits: currency.minorDigits, decimal: decimalComma.value ? "," : "." }}
      values={values}
      onValues={setValues}
      onKeep={press}
      unit={currency.currency}
      says={t("one-part.price")}
      words={{ ...threeWords(), unreadable: t("one-part.unreadable-money") }}
    />
  );
}

function PriceSheet(over: OverPart) {
  const { currency } = over.on;
  return (
    <Sheet open title={t("one-part.price")} closeWords={t("app.cancel")} onClose={over.onClose}>
      {currency ? (
        <Price {...over} currency={currency} />
      ) : (
        <Notice
          kind="plain"
          title={t("one-part.price.no-terms")}
          action={{ words: t("one-part.from.add"), href: to("settings") }}
        />
      )}
    </Sheet>
  );
}

function FromSheet(over: OverPart) {
  const { on, part, onClose } = over;
  const keep = useKeep(over);
  const { currency } = on;
  const [form, setForm] = useState(fromForm(part, currency));
  const set = (change: Partial<typeof form>): void => setForm({ ...form, ...change });
  const suppliers = [...(on.house?.suppliers.values() ?? [])].flatMap((standing) => last(standing) ?? []);
  const chosen = suppliers.find(({ id }) => id === form.supplier);
  const odd = oddIn(form, currency);
  return (
    <Sheet
      open
      title={t("one-part.from")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={
        <NextAction words={t("app.keep")} onPress={() => keep(changeOf(form, currency))} disabled={odd.length > 0} />
      }
    >
      <Field
        id="part-supplier"
        kind="select"
        label={t("one-part.from")}
        value={form.supplier}
        onInput={(supplier) => set({ supplier })}
        options={[
          { value: "", words: t("one-part.from.any") },
          ...suppliers.map(({ id, name }) => ({ value: id, words: name })),
        ]}
      />
      <Tool words={t("one-part.from.add")} href={to("settings")} />
      <Field
        id="part-lead"
        kind="number"
        label={t("one-part.lead")}
        value={form.leadDays}
        onInput={(leadDays) => set({ leadDays })}
        {...(chosen?.leadDays === undefined ? {} : { help: t("one-part.lead.own", { n: chosen.leadDays }) })}
        {...(odd.includes("leadDays") ? { problem: t("one-part.odd-days") } : {})}
      />
      {currency &&
        (["deposit", "carriage"] as const).map((field) => (
          <Field
            key={field}
            id={`part-${field}`}
            kind="number"
            label={t(`one-part.${field}`)}
            unit={currency.currency}
            value={form[field]}
            onInput={(text) => set({ [field]: text })}
            {...(odd.includes(field) ? { problem: t("one-part.odd-money") } : {})}
          />
        ))}
      <DayEntry
        id="part-priced-on"
        label={t("one-part.priced-on")}
        value={form.pricedOn}
        onDay={(pricedOn) => set({ pricedOn })}
        quick={daysGone(on.input.today)}
        quickLabel={t("plan-day.quick")}
        latest={on.input.today}
        says={form.pricedOn === "" ? undefined : dayWords(form.pricedOn)}
      />
    </Sheet>
  );
}

const OTHER = "other";

function PairSheet(over: OverPart) {
  const { on, part, onClose } = over;
  const keep = useKeep(over);
  const others = partsOf(on, part.jobId).filter(({ id }) => id !== part.id);
  const stands = part.work.counterpart;
  const isListed = stands === undefined || others.some(({ at }) => at.part === stands);
  const [chosen, setChosen] = useState(isListed ? (stands ?? "") : OTHER);
  const [words, setWords] = useState(isListed ? "" : (stands ?? ""));
  const [why, setWhy] = useState(part.work.aloneBecause ?? "");
  const typed = words.trim();
  const counterpart = chosen === OTHER ? (typed === "" ? undefined : typed) : chosen === "" ? undefined : chosen;
  const press = (): void => keep({ counterpart, aloneBecause: why.trim() === "" ? undefined : why.trim() });
  return (
    <Sheet
      open
      title={t("one-part.pair")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={press} />}
    >
      <Field
        id="part-pair"
        kind="select"
        label={t("one-part.pair")}
        value={chosen}
        onInput={setChosen}
        options={[
          { value: "", words: t("one-part.pair.none") },
          ...others.map(({ at, name }) => ({ value: at.part, words: name })),
          { value: OTHER, words: t("one-part.pair.other") },
        ]}
      />
      {chosen === OTHER && (
        <Field id="part-pair-words" kind="text" label={t("one-part.pair.words")} value={words} onInput={setWords} />
      )}
      <Field id="part-alone" kind="area" label={t("one-part.pair.why")} value={why} onInput={setWhy} />
    </Sheet>
  );
}

const SHEETS = { what: WhatSheet, price: PriceSheet, from: FromSheet, pair: PairSheet } as const;

export function FiguresSheet({ sheet, ...over }: OverPart & { readonly sheet: keyof typeof SHEETS }) {
  const Chosen = SHEETS[sheet];
  return <Chosen {...over} />;
}
