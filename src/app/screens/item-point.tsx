/** A point: what it is called and asked, how one looks, what is replied, where and when. */
import { AUDIENCES, type Audience } from "../../core/terms/index.js";
import { kindChoices, pointChoices, stateChoices, toolChoices } from "../state/sheet-choices.js";
import { namesAt, textAt, withAt, withoutAt } from "../state/sheet-forms.js";
import { fieldsOf, kindAt } from "../state/sheet-forms-point.js";
import { t as shared } from "../texts/round.js";
import { t } from "../texts/sheet-forms.js";
import { unitWords } from "../texts/units.js";
import { Boxes, boxId, FigureBox, ItemForm, SwitchBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { ConditionField } from "./item-condition.js";
import type { ItemFormProps } from "./item-form.js";
import { PointReplies } from "./item-point-reply.js";

/** One of a list is in it or not; the list keeps the order of all there could be. */
function ListedBox<One extends string>({ at, one, all, label, says }: ListedBoxProps<One>) {
  const { is, change } = useItem();
  const listed = namesAt(is, [at]);
  const put = (on: boolean): void =>
    change((item) => {
      const now = all.filter((other) => (other === one ? on : namesAt(item, [at]).includes(other)));
      return at === "needs" && now.length === 0 ? withAt(item, [at], undefined) : withAt(item, [at], now);
    });
  return (
    <SwitchBox
      at={[at, one]}
      label={label}
      {...(says === undefined ? {} : { says })}
      on={listed.includes(one)}
      onPut={put}
    />
  );
}
interface ListedBoxProps<One> {
  readonly at: "who" | "needs";
  readonly one: One;
  readonly all: readonly One[];
  readonly label: string;
  readonly says?: string;
}

function Asked() {
  const { is, words, told } = useItem();
  const who = namesAt(is, ["who"]);
  const question = (audience: Audience) => (
    <TextBox
      key={audience}
      at={[...words, "ask", audience]}
      label={t(`item-point.ask.${audience}`)}
      help={t(`item-point.ask.${audience}.help`)}
      long
    />
  );
  const asked = AUDIENCES.filter((audience) => who.includes(audience));
  const whoTold = told.find(({ about }) => about?.inside.length === 1 && about.inside[0] === "who")?.says;
  return (
    <>
      <section class="band">
        <header>
          <h2>{t("item-point.who")}</h2>
        </header>
        {AUDIENCES.map((one) => (
          <ListedBox
            key={one}
            at="who"
            one={one}
            all={AUDIENCES}
            label={shared(`who.${one}`)}
            says={shared(`who.${one}.says`)}
          />
        ))}
        {whoTold && <p class="remark problem">{whoTold}</p>}
      </section>
      <Boxes heading={t("item-point.question")}>
        {asked.map(question)}
        {!who.includes("owner") && (
          <TextBox at={[...words, "leave"]} label={t("item-point.leave")} help={t("item-point.leave.help")} long />
        )}
        <TextBox at={[...words, "how"]} label={t("item-point.how")} help={t("item-point.how.help")} long />
        <TextBox at={[...words, "trap"]} label={t("item-point.trap")} help={t("item-point.trap.help")} long />
      </Boxes>
    </>
  );
}

function Where() {
  const { is, item, work, told, change } = useItem();
  const gauge = work.common.gauges.find(({ id }) => id === textAt(is, ["tool"]));
  const reading = fieldsOf(is).find((field) => kindAt(is, field) === "reading");
  const unit = reading === undefined ? "" : textAt(is, ["fields", reading, "unit"]);
  const at = ["asked-when"];
  return (
    <Boxes heading={t("item-point.where")}>
      <ChoiceBox
        at={["place"]}
        label={t("item-point.place")}
        help={t("item-point.place.help")}
        choices={kindChoices(work)}
        wanted
      />
      <NamesBox at={["states"]} label={t("item-point.states")} choices={stateChoices(work)} kept />
      <ChoiceBox
        at={["tool"]}
        label={t("item-point.tool")}
        choices={toolChoices(work)}
        none={t("item-point.tool.none")}
      />
      {gauge && reading !== undefined && (
        <FigureBox
          at={["set-up-error"]}
          label={t("item-point.set-up")}
          help={t("item-point.set-up.help")}
          unit={unitWords(unit)}
        />
      )}
      <ConditionField
        id={boxId(at)}
        label={t("item-point.asked-when")}
        value={textAt(is, at)}
        scope={textAt(is, ["place"])}
        work={work}
        told={told.filter(({ about }) => about?.inside[0] === "asked-when")}
        onChange={(cel) => change((now) => (cel.trim() === "" ? withoutAt(now, at) : withAt(now, at, cel)))}
        optional
      />
      <ChoiceBox
        at={["same-entry"]}
        label={t("item-point.same-entry")}
        choices={pointChoices(work).filter(({ value }) => value !== item)}
        none={t("sheet-form.none")}
      />
    </Boxes>
  );
}

const NEEDS = ["reading", "picture", "sound"] as const;

function Point() {
  const { words } = useItem();
  return (
    <>
      <Boxes>
        <TextBox at={[...words, "name"]} label={t("item-point.name")} help={t("item-point.name.help")} wanted />
      </Boxes>
      <Asked />
      <PointReplies />
      <Where />
      <section class="band">
        <header>
          <h2>{t("item-point.more")}</h2>
        </header>
        <SwitchBox at={["safety-critical"]} label={t("item-point.critical")} says={t("item-point.critical.says")} />
        {NEEDS.map((one) => (
          <ListedBox key={one} at="needs" one={one} all={NEEDS} label={t(`item-point.needs.${one}`)} />
        ))}
      </section>
    </>
  );
}

export const ItemPoint = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Point />
  </ItemForm>
);
