/** What a point's reply holds, in order: words, readings, counts, yes or no, date codes, each with what belongs to it. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { Fold } from "../parts/fold.js";
import { Sheet } from "../parts/sheet.js";
import { capital } from "../state/knowledge.js";
import { quantityChoices, unitChoices } from "../state/sheet-choices.js";
import { isOnAt, textAt, toldAt, valueAt, withAt } from "../state/sheet-forms.js";
import {
  DATE_CODES,
  fieldCalled,
  fieldMoved,
  fieldsOf,
  kindAt,
  REPLY_KINDS,
  type ReplyKind,
  withField,
  withoutField,
  withQuantity,
  withUnit,
} from "../state/sheet-forms-point.js";
import { t } from "../texts/sheet-forms.js";
import { unitWords } from "../texts/units.js";
import { FigureBox, SwitchBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox } from "./item-choice.js";
import { ReplyWords } from "./item-point-words.js";
import { Steps } from "./item-rows.js";

function Reading({ field }: { readonly field: string }) {
  const { is, change } = useItem();
  const at = (key: string) => ["fields", field, key];
  const [quantity, unit] = [textAt(is, at("quantity")), textAt(is, at("unit"))];
  const shown = unitWords(unit);
  const [from, to] = [0, 1].map((end) => valueAt(is, [...at("window"), end]));
  const astray =
    typeof from === "number" && typeof to === "number" && from >= to ? t("item-reply.window.astray") : undefined;
  return (
    <>
      <ChoiceBox
        at={at("quantity")}
        label={t("item-reply.quantity")}
        choices={quantityChoices()}
        onPut={(next) => change((item) => withQuantity(item, field, next))}
      />
      <ChoiceBox
        at={at("unit")}
        label={t("item-reply.unit")}
        choices={unitChoices(quantity, unit)}
        onPut={(next) => change((item) => withUnit(item, field, next))}
      />
      <FigureBox at={[...at("window"), 0]} label={t("item-reply.window.from")} unit={shown} wanted />
      <FigureBox
        at={[...at("window"), 1]}
        label={t("item-reply.window.to")}
        help={t("item-reply.window.help")}
        unit={shown}
        wanted
        astray={astray}
      />
      <FigureBox at={at("shots")} label={t("item-reply.shots")} help={t("item-reply.shots.help")} whole />
      {quantity === "duration" && <Watch field={field} />}
      <ReplyWords field={field} label={t("item-reply.results")} />
    </>
  );
}

function Watch({ field }: { readonly field: string }) {
  const { is, change } = useItem();
  const at = ["fields", field, "stopwatch"];
  const runs = valueAt(is, at) !== undefined && valueAt(is, at) !== false;
  return (
    <>
      <SwitchBox
        at={at}
        label={t("item-reply.watch")}
        on={runs}
        onPut={(on) => change((item) => withAt(item, at, on || undefined))}
      />
      {runs && !isOnAt(is, at) && <FigureBox at={at} label={t("item-reply.watch.until")} unit="s" whole wanted />}
      {runs && isOnAt(is, at) && (
        <Tool words={t("item-reply.watch.ends")} onPress={() => change((item) => withAt(item, at, 60))} />
      )}
    </>
  );
}

function Inside({ field }: { readonly field: string }) {
  const { is } = useItem();
  const kind = kindAt(is, field);
  const at = ["fields", field];
  if (kind === "words") return <ReplyWords field={field} label={t("item-reply.words")} />;
  if (kind === "reading") return <Reading field={field} />;
  if (kind === "count")
    return (
      <>
        <FigureBox at={[...at, "count", "from"]} label={t("item-reply.count.from")} whole wanted />
        <FigureBox at={[...at, "count", "to"]} label={t("item-reply.count.to")} whole wanted />
      </>
    );
  if (kind === "yes") return null;
  return (
    <ChoiceBox
      at={[...at, "dateCode"]}
      label={t("item-reply.date")}
      choices={DATE_CODES.map((value) => ({ value, words: t(`item-reply.date.${value}`) }))}
    />
  );
}

function OneReply({ field, index, of }: { readonly field: string; readonly index: number; readonly of: number }) {
  const { is, language, base, told, change, words } = useItem();
  const body = (
    <>
      <div class="form">
        {of > 1 && <TextBox at={[...words, "fields", field]} label={t("item-reply.name")} wanted />}
        <Inside field={field} />
      </div>
      <SwitchBox
        at={["fields", field, "optional"]}
        label={t("item-reply.optional")}
        says={t("item-reply.optional.says")}
      />
      <div class="form">
        <Steps
          index={index}
          of={of}
          onMove={(to) => change((item) => fieldMoved(item, index, to))}
          outWords={t("item-reply.out")}
          onOut={() => change((item) => withoutField({ is: item, language, base }, field))}
        />
      </div>
    </>
  );
  if (of === 1) return body;
  const amiss = toldAt(
    told.filter((one) => one.is === "problem"),
    ["fields", field],
  );
  const name = capital(fieldCalled({ is, language, base }, field));
  return (
    <Fold
      title={name}
      count={amiss === undefined ? t(`item-reply.kind.${kindAt(is, field)}`) : t("sheet-form.amiss")}
      open={false}
    >
      {body}
    </Fold>
  );
}

export function PointReplies() {
  const { is, language, base, told, change } = useItem();
  const [adds, setAdds] = useState(false);
  const fields = fieldsOf(is);
  const none = fields.length === 0;
  const add = (kind: ReplyKind): void => {
    change((item) => withField({ is: item, language, base }, kind, t(`item-reply.kind.${kind}`)));
    setAdds(false);
  };
  const kinds = REPLY_KINDS.map((kind) => (
    <Tool
      key={kind}
      words={t(`item-reply.kind.${kind}`)}
      says={t(`item-reply.kind.${kind}.says`)}
      onPress={() => add(kind)}
    />
  ));
  const lone = told.filter(({ about }) => about?.inside.length === 1 && about.inside[0] === "fields");
  return (
    <section class="band">
      <header>
        <h2>{t("item-reply.title")}</h2>
      </header>
      {fields.length > 1 && <p class="remark small">{t("item-reply.first")}</p>}
      {fields.map((field, index) => (
        <OneReply key={field} field={field} index={index} of={fields.length} />
      ))}
      {lone.map(({ says }) => (
        <p key={says} class="remark problem">
          {says}
        </p>
      ))}
      {none && <p class="remark">{t("item-reply.none")}</p>}
      <div class="acts">{none ? kinds : <Tool words={t("item-reply.add")} onPress={() => setAdds(true)} />}</div>
      {adds && (
        <Sheet open title={t("item-reply.add")} closeWords={t("sheet-form.cancel")} onClose={() => setAdds(false)}>
          <div class="acts">{kinds}</div>
        </Sheet>
      )}
    </section>
  );
}
