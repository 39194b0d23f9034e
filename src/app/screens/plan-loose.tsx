/** What was left loose, drained, off or unplugged: told, and cleared by somebody who looked, before the car leaves. */
import { useState } from "preact/hooks";
import { LOOSE } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { capital, placeName } from "../state/knowledge.js";
import { type LooseLine, looseView } from "../state/loose-view.js";
import { clearedLoose, leftLoose } from "../state/plan-acts.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-loose.js";
import { Plain } from "./frame.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { PickPlace } from "./pick-place.js";
import { UndoRow } from "./undo.js";

interface OverLoose {
  readonly on: OnPlan;
  readonly onClose: () => void;
}

function AddLoose({ on, onClose }: OverLoose) {
  const { journal } = useApp();
  const [what, setWhat] = useState<(typeof LOOSE)[number]>();
  const [words, setWords] = useState("");
  const [place, setPlace] = useState("car");
  const [asking, setAsking] = useState(false);
  const isWhole = what !== undefined && words.trim() !== "";
  const press = (): void => {
    if (what === undefined || words.trim() === "") return;
    const said = { what, words: words.trim(), place, on: on.input.today };
    void leftLoose(journal, on.stream, (loose) => ({ ...said, loose }));
    onClose();
  };
  return (
    <Sheet
      open
      title={t("loose.add")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={press} disabled={!isWhole} />}
    >
      <ReplyGrid
        kind="choice"
        label={t("loose.what")}
        replies={LOOSE.map((id) => ({ id, words: t(`loose.what.${id}`), chosen: id === what }))}
        onChoose={(id) => setWhat(LOOSE.find((one) => one === id))}
      />
      <Field id="loose-words" kind="text" label={t("loose.words")} value={words} onInput={setWords} required />
      <ListRow
        title={t("loose.place")}
        second={capital(placeName(on.known, place))}
        aside={t("loose.place.change")}
        onPress={() => setAsking(true)}
      />
      <PickPlace
        on={on}
        open={asking}
        placesOnly
        onPick={({ spot }) => {
          setAsking(false);
          if (spot.place !== undefined) setPlace(spot.place);
        }}
        onClose={() => setAsking(false)}
      />
    </Sheet>
  );
}

/** Who looked is asked anew each time: it may be somebody else than whoever holds the phone. */
function ClearLoose({ on, line, onClose }: OverLoose & { readonly line: LooseLine }) {
  const { journal, settings } = useApp();
  const [who, setWho] = useState(settings.value.name);
  const [words, setWords] = useState("");
  const isWhole = who.trim() !== "" && words.trim() !== "";
  const press = (): void => {
    if (!isWhole) return;
    const said = t("loose.clear.said", { words: words.trim(), who: who.trim() });
    void clearedLoose(journal, on.stream, { loose: line.id, on: on.input.today, words: said });
    onClose();
  };
  return (
    <Sheet
      open
      title={`${t("loose.clear")}: ${line.title}`}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("loose.clear.keep")} onPress={press} disabled={!isWhole} />}
    >
      <p>{t("loose.torque")}</p>
      <Field id="loose-who" kind="text" label={t("loose.clear.who")} value={who} onInput={setWho} required />
      <Field id="loose-done" kind="area" label={t("loose.clear.words")} value={words} onInput={setWords} required />
    </Sheet>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const [isAdding, setAdding] = useState(false);
  const [clearing, setClearing] = useState<LooseLine>();
  const { open, cleared } = looseView(on.known, on.said, on.input.today);
  return (
    <>
      {open.length === 0 && <EmptyState title={t("loose.none")} says={t("loose.none.says")} />}
      {open.length > 0 && (
        <Band heading={t("loose.open")} aside={String(open.length)}>
          {open.map((line) => (
            <ListRow
              key={line.id}
              title={line.title}
              second={line.second}
              aside={t("loose.clear")}
              onPress={() => setClearing(line)}
            />
          ))}
        </Band>
      )}
      <div class="acts">
        <NextAction words={t("loose.add")} onPress={() => setAdding(true)} />
      </div>
      {cleared.length > 0 && (
        <Band heading={t("loose.cleared")}>
          {cleared.map(({ id, title, second }) => (
            <ListRow key={id} title={title} second={second} />
          ))}
        </Band>
      )}
      <UndoRow on={on} />
      {isAdding && <AddLoose on={on} onClose={() => setAdding(false)} />}
      {clearing && <ClearLoose on={on} line={clearing} onClose={() => setClearing(undefined)} />}
    </>
  );
}

export const PlanLoose = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("loose.title")} second={t("loose.says")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
