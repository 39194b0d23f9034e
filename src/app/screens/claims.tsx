/** What is claimed of the car, in its own words, each with whether it was shown; typed or pasted, one a line. */
import { useState } from "preact/hooks";
import { CLAIM_FROM, CLAIM_WORDS, type Claim, type ClaimSeen } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type ClaimLine, claimLines } from "../state/claims-view.js";
import { dayOf } from "../state/today.js";
import { addClaims, claimTexts, putClaim, seeClaim } from "../state/viewing-acts.js";
import { t } from "../texts/viewing-page.js";
import type { OnPlan } from "./on-plan.js";

const NOT_ASKED = "not-asked";

interface FromFieldProps {
  readonly id: string;
  readonly from: Claim["from"];
  readonly onChoose: (from: Claim["from"]) => void;
}

const FromField = ({ id, from, onChoose }: FromFieldProps) => (
  <Field
    id={id}
    kind="select"
    label={t("claim.from")}
    value={from}
    onInput={(value) => onChoose(CLAIM_FROM.find((one) => one === value) ?? from)}
    options={CLAIM_FROM.map((value) => ({ value, words: t(`claim.from.${value}`) }))}
  />
);

export function Claims({ on }: { readonly on: OnPlan }) {
  const [open, setOpen] = useState<string>();
  const lines = claimLines(on.said);
  const line = lines.find(({ id }) => id === open);
  return (
    <Band heading={t("claims.title")}>
      {lines.length === 0 && <p class="remark">{t("claims.none")}</p>}
      {lines.map((one) => (
        <ListRow
          key={one.id}
          title={`“${one.claim.text}”`}
          second={t(`claim.from.${one.claim.from}`)}
          aside={one.differ ? t("claim.differ") : t(`claim.word.${one.seen?.word ?? "not-asked"}`)}
          onPress={() => setOpen(one.id)}
        />
      ))}
      <AddClaims on={on} />
      {line && <ClaimSheet key={line.id} on={on} line={line} onClose={() => setOpen(undefined)} />}
    </Band>
  );
}

/** Before arrival it is the advert that claims; once looking has begun, the seller. */
function AddClaims({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const [typed, setTyped] = useState("");
  const [chosen, setChosen] = useState<Claim["from"]>();
  const from = chosen ?? (on.visit.replies.size === 0 ? "advert" : "seller");
  const n = claimTexts(typed).length;
  const keep = (): void => {
    if (n === 0) return;
    void addClaims(journal, on.stream, typed, from).then((kept) => {
      if (kept) setTyped("");
    });
  };
  return (
    <div class="form">
      <Field
        id="claims-typed"
        kind="area"
        label={t("claims.add")}
        help={t("claims.add.help")}
        value={typed}
        onInput={setTyped}
      />
      <FromField id="claims-from" from={from} onChoose={setChosen} />
      <div class="acts">
        <Tool words={n === 0 ? t("claims.keep.none") : t("claims.keep", { n })} disabled={n === 0} onPress={keep} />
      </div>
    </div>
  );
}

const isSeen = (word: ClaimSeen["word"] | typeof NOT_ASKED | undefined): word is ClaimSeen["word"] =>
  word !== undefined && word !== NOT_ASKED;

function ClaimSheet({
  on,
  line,
  onClose,
}: {
  readonly on: OnPlan;
  readonly line: ClaimLine;
  readonly onClose: () => void;
}) {
  const { journal, phone } = useApp();
  // Where two people differ nothing is chosen yet, and left so both their answers stay.
  const [word, setWord] = useState<ClaimSeen["word"] | typeof NOT_ASKED | undefined>(
    line.differ ? undefined : (line.seen?.word ?? NOT_ASKED),
  );
  const [words, setWords] = useState(line.seen?.words ?? "");
  const [text, setText] = useState(line.claim.text);
  const [from, setFrom] = useState(line.claim.from);
  const isBare = text.trim() === "";
  const keep = async (): Promise<void> => {
    const mended = { text: text.trim(), from };
    const isMended = mended.text !== line.claim.text || from !== line.claim.from;
    if (isMended && !(await putClaim(journal, on.stream, line.id, mended))) return;
    const seen = isSeen(word) ? { word, words: words.trim(), on: dayOf(phone.now()) } : null;
    const isOther = seen?.word !== line.seen?.word || (seen?.words ?? "") !== (line.seen?.words ?? "") || line.differ;
    if (word !== undefined && isOther && !(await seeClaim(journal, on.stream, line.id, seen))) return;
    onClose();
  };
  return (
    <Sheet
      open
      title={`“${line.claim.text}”`}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("claim.keep")} onPress={() => void keep()} disabled={isBare} />}
    >
      {line.differ && <Notice kind="plain" title={t("claim.differ.says")} />}
      <ReplyGrid
        kind="choice"
        columns={1}
        label={t("claim.seen")}
        replies={[
          ...CLAIM_WORDS.map((id) => ({
            id: id as string,
            words: t(`claim.word.${id}`),
            says: t(`claim.word.${id}.says`),
            chosen: id === word,
          })),
          { id: NOT_ASKED, words: t("claim.word.not-asked"), chosen: word === NOT_ASKED },
        ]}
        onChoose={(id) => setWord(CLAIM_WORDS.find((one) => one === id) ?? NOT_ASKED)}
      />
      <div class="form">
        {isSeen(word) && (
          <Field id="claim-words" kind="area" label={t("claim.words")} value={words} onInput={setWords} />
        )}
        <Field
          id="claim-text"
          kind="area"
          label={t("claim.text")}
          value={text}
          onInput={setText}
          problem={isBare ? t("claim.text.bare") : undefined}
        />
        <FromField id="claim-from" from={from} onChoose={setFrom} />
        <div class="acts">
          <Tool words={t("claim.out")} onPress={() => void putClaim(journal, on.stream, line.id, null).then(onClose)} />
        </div>
      </div>
    </Sheet>
  );
}
