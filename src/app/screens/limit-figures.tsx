/** The figures of one limit as they stand and as they stood, what is told of each, and what can be done with them. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { isSamePerson } from "../../core/terms/run.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Fold } from "../parts/fold.js";
import { Notice } from "../parts/notice.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { keepSecondLook, takeOut } from "../state/limit-acts.js";
import { type FigureLine, nameIn, type PlaceLine } from "../state/limit-book.js";
import { t } from "../texts/limits.js";

interface FiguresProps {
  readonly car: CarState;
  readonly lines: readonly PlaceLine[];
  readonly nameOf: (place: string) => string;
}

/** One figure with everything told of it. */
function Figure({ line, aside }: { readonly line: FigureLine; readonly aside: string }) {
  return (
    <div class="row plain figure-line">
      <span>
        <span class="row-title">{line.title}</span>
        {line.converted !== "" && <span class="small n">{line.converted}</span>}
        {[...line.says, ...line.by].map((says) => (
          <span key={says} class="small n">
            {says}
          </span>
        ))}
      </span>
      <span class="aside small n">{aside}</span>
    </div>
  );
}

/** Asked anew each time: it has to be somebody else than whoever entered the figure. */
function LookSheet({ car, at, line, onClose }: SheetProps & { readonly line: FigureLine }) {
  const { journal } = useApp();
  const [who, setWho] = useState("");
  const [words, setWords] = useState("");
  const [tried, setTried] = useState(false);
  const entered = nameIn(car, line.said.by);
  const isSame = isSamePerson(who, entered);
  const problem = who.trim() === "" ? t("look.who.wanted") : isSame ? t("look.who.same", { who: entered }) : undefined;
  const keep = (): void => {
    setTried(true);
    if (problem !== undefined) return;
    void keepSecondLook(journal, car.stream, { key: at.key, id: line.id }, who, words).then(
      (kept) => kept && onClose(),
    );
  };
  return (
    <Sheet
      open
      title={t("look.title")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("look.keep")} onPress={keep} />}
    >
      <p>{line.title}</p>
      <Field
        id="look-who"
        kind="text"
        label={t("look.who")}
        value={who}
        onInput={setWho}
        maxLength={200}
        required
        {...(tried && problem !== undefined ? { problem } : {})}
      />
      <Field id="look-words" kind="text" label={t("look.words")} value={words} onInput={setWords} maxLength={200} />
    </Sheet>
  );
}

interface SheetProps {
  readonly car: CarState;
  readonly at: PlaceLine;
  readonly onClose: () => void;
}

function OutSheet({ car, at, onClose }: SheetProps) {
  const { journal } = useApp();
  const [why, setWhy] = useState("");
  const [tried, setTried] = useState(false);
  const keep = (): void => {
    setTried(true);
    if (why.trim() !== "") void takeOut(journal, car.stream, at.key, why).then((kept) => kept && onClose());
  };
  return (
    <Sheet
      open
      title={t("out.title")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("out.keep")} onPress={keep} />}
    >
      <p>{t("out.says")}</p>
      <Field
        id="out-why"
        kind="text"
        label={t("out.why")}
        value={why}
        onInput={setWhy}
        maxLength={200}
        required
        {...(tried && why.trim() === "" ? { problem: t("out.why.wanted") } : {})}
      />
    </Sheet>
  );
}

type Over = { readonly is: "look"; readonly line: FigureLine } | { readonly is: "out" };

/** All figures for one place, or for all such places. */
function AtPlace({ car, at, nameOf }: Omit<FiguresProps, "lines"> & { readonly at: PlaceLine }) {
  const [over, setOver] = useState<Over>();
  const place = at.place === undefined ? t("limit.everywhere") : nameOf(at.place);
  const close = (): void => setOver(undefined);
  return (
    <>
      {at.standing.length > 1 && <Notice kind="plain" title={t("told.differ")} />}
      {at.standing.map((line) => (
        <div key={line.id}>
          <Figure line={line} aside={place} />
          {line.isUnread && (
            <Notice
              kind="plain"
              title={t("look.wanted")}
              says={t("look.says")}
              action={{ words: t("look.title"), onPress: () => setOver({ is: "look", line }) }}
            />
          )}
        </div>
      ))}
      {at.standing.length > 0 && (
        <div class="acts">
          <Tool
            words={at.place === undefined ? t("out.title") : t("out.at", { place })}
            onPress={() => setOver({ is: "out" })}
          />
        </div>
      )}
      {at.before.length > 0 && (
        <Fold title={`${t("told.before")}: ${place}`} count={at.before.length} open={false}>
          {at.before.map((line) => (
            <Figure key={line.id} line={line} aside={t(`told.is.${line.said.is}`)} />
          ))}
        </Fold>
      )}
      {over?.is === "look" && <LookSheet car={car} at={at} line={over.line} onClose={close} />}
      {over?.is === "out" && <OutSheet car={car} at={at} onClose={close} />}
    </>
  );
}

export const Figures = ({ lines, ...of }: FiguresProps) => (
  <>
    {lines.map((at) => (
      <AtPlace key={at.key} {...of} at={at} />
    ))}
  </>
);
