/** The words a reply is chosen from: how each is spoken, in what order, which stand alone, which 'no fault seen' enters. */
import { useState } from "preact/hooks";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { capital, plainWord } from "../state/knowledge.js";
import { isOnAt, namesAt, toldAt, toldOf } from "../state/sheet-forms.js";
import {
  kindAt,
  spokenAt,
  unremarkableAt,
  withAlone,
  withoutWord,
  withSeveral,
  withSpoken,
  withUnremarkable,
  withWord,
  wordMoved,
  wordsAt,
  wordsPath,
} from "../state/sheet-forms-point.js";
import { t } from "../texts/sheet-forms.js";
import { SwitchBox, TextBox, useItem, useTold } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { AddLine, Steps } from "./item-rows.js";

interface WordProps {
  readonly field: string;
  readonly word: string;
  readonly onClose: () => void;
}

/** One word, opened: its two ways of being spoken, its place, whether it stands alone. */
function WordSheet({ field, word, onClose }: WordProps) {
  const { is, language, words, change } = useItem();
  const all = wordsAt(is, field);
  const index = all.indexOf(word);
  const spoken = spokenAt({ is, language }, field, word);
  const several = isOnAt(is, ["fields", field, "several"]);
  const alone = namesAt(is, ["fields", field, "exclusive"]);
  const at = [...words, "words", word];
  const say = (part: Partial<typeof spoken>): void =>
    change((item) =>
      withSpoken({ is: item, language }, field, word, { ...spokenAt({ is: item, language }, field, word), ...part }),
    );
  return (
    <Sheet
      open
      title={capital(spoken.technician || plainWord(word))}
      closeWords={t("sheet-form.done")}
      onClose={onClose}
    >
      <div class="form">
        <TextBox
          at={at}
          label={t("item-reply.spoken")}
          help={t("item-reply.spoken.help")}
          value={spoken.technician}
          onPut={(technician) => technician !== "" && say({ technician })}
          wanted
        />
        <TextBox
          at={[...at, "owner"]}
          label={t("item-reply.spoken.owner")}
          help={t("item-reply.spoken.owner.help")}
          value={spoken.owner}
          onPut={(owner) => say({ owner })}
        />
      </div>
      {several && (
        <SwitchBox
          at={["fields", field, "exclusive", word]}
          label={t("item-reply.alone")}
          says={t("item-reply.alone.says")}
          on={alone.includes(word)}
          onPut={(on) =>
            change((item) =>
              withAlone(
                item,
                field,
                all.filter((one) => (one === word ? on : alone.includes(one))),
              ),
            )
          }
        />
      )}
      <Steps
        index={index}
        of={all.length}
        onMove={(to) => change((item) => wordMoved(item, field, index, to))}
        onOut={() => {
          change((item) => withoutWord({ is: item, language }, field, word));
          onClose();
        }}
      />
    </Sheet>
  );
}

/** What 'no fault seen' enters here: a point that has none is answered by itself. */
function Unremarkable({ field }: { readonly field: string }) {
  const { is, language, told, change } = useItem();
  const choices = wordsAt(is, field).map((value) => ({
    value,
    words: capital(spokenAt({ is, language }, field, value).technician || plainWord(value)),
  }));
  const at = ["unremarkable", field];
  const entered = unremarkableAt(is, field);
  const put = (words: readonly string[]): void => change((item) => withUnremarkable(item, field, words));
  const gap = toldOf(told, ["unremarkable"]);
  const help = [t("item-reply.unremarkable.help"), gap].filter(Boolean).join(" ");
  const shared = { at, choices, help, label: t("item-reply.unremarkable") };
  return isOnAt(is, ["fields", field, "several"]) ? (
    <NamesBox {...shared} value={entered} onPut={put} />
  ) : (
    <ChoiceBox
      {...shared}
      value={entered[0] ?? ""}
      none={t("item-reply.unremarkable.none")}
      onPut={(word) => put(word === "" ? [] : [word])}
    />
  );
}

/** The words of a field, or the results that may be said in place of a number. */
export function ReplyWords({ field, label }: { readonly field: string; readonly label: string }) {
  const { is, language, base, words, told, change } = useItem();
  const [open, setOpen] = useState<string>();
  const path = wordsPath(is, field);
  const { problem } = useTold(path);
  const areWords = kindAt(is, field) === "words";
  const all = wordsAt(is, field);
  const alone = namesAt(is, ["fields", field, "exclusive"]);
  const second = (word: string, owner: string): string | undefined => {
    const wrong = toldAt(told, [...words, "words", word]) ?? toldAt(told, [...words, "words", `${field}.${word}`]);
    const own = owner === "" ? undefined : t("item-reply.owner-reads", { words: owner });
    return (
      [wrong, own, alone.includes(word) ? t("item-reply.alone") : undefined].filter(Boolean).join(" · ") || undefined
    );
  };
  return (
    <>
      <p class="label">{label}</p>
      <div class="item-rows">
        {all.map((word) => {
          const spoken = spokenAt({ is, language }, field, word);
          return (
            <ListRow
              key={word}
              folded
              title={spoken.technician || plainWord(word)}
              second={second(word, spoken.owner)}
              onPress={() => setOpen(word)}
            />
          );
        })}
      </div>
      {problem && <p class="problem">{problem}</p>}
      <AddLine
        id={`add-${field}`}
        label={all.length === 0 ? t("item-reply.word.first") : t("item-reply.word.more")}
        words={t("sheet-form.add")}
        onAdd={(name) => change((item) => withWord({ is: item, language, base }, field, name))}
      />
      {areWords && (
        <div class="item-rows">
          <SwitchBox
            at={["fields", field, "several"]}
            label={t("item-reply.several")}
            says={t("item-reply.several.says")}
            onPut={(on) => change((item) => withSeveral(item, field, on))}
          />
        </div>
      )}
      {areWords && all.length > 0 && <Unremarkable field={field} />}
      {open !== undefined && all.includes(open) && (
        <WordSheet field={field} word={open} onClose={() => setOpen(undefined)} />
      )}
    </>
  );
}
