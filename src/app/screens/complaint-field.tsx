/** The complaint in the owner's words, and the known complaints it sounds like: they put the likely points first. */
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { useApp } from "../state/app.js";
import { complaintsOf } from "../state/shelf.js";
import { t } from "../texts/round.js";
import { useLoaded } from "./use-loaded.js";

const MOST_SUGGESTED = 4;

interface ComplaintFieldProps {
  readonly id: string;
  readonly text: string;
  readonly chosen: string | undefined;
  readonly onText: (text: string) => void;
  /** With the points the known complaint puts first. */
  readonly onChoose: (known: string | undefined, points: readonly string[]) => void;
}

export function ComplaintField({ id, text, chosen, onText, onChoose }: ComplaintFieldProps) {
  const { judging, shelf } = useApp();
  const isSaid = text.trim() !== "";
  // Nothing is fetched for an empty box.
  const [core, known] =
    useLoaded(async () => (isSaid ? Promise.all([judging(), complaintsOf(shelf)]) : undefined), String(isSaid)) ?? [];
  const words = known?.texts ?? {};
  const pointsOf = (one: string): readonly string[] => known?.listed.find(({ id }) => id === one)?.points ?? [];
  const suggested = core && isSaid ? core.complaintsIn(text, words).slice(0, MOST_SUGGESTED) : [];
  const shown = chosen === undefined || suggested.includes(chosen) ? suggested : [chosen, ...suggested];
  return (
    <div class="form">
      <Field
        id={id}
        kind="area"
        label={t("new-visit.complaint")}
        help={t("new-visit.complaint.help")}
        value={text}
        onInput={onText}
      />
      {core && isSaid && shown.length === 0 && <p class="remark">{t("new-visit.sounds-like-none")}</p>}
      {shown.length > 0 && (
        <>
          <p class="label">{t("new-visit.sounds-like")}</p>
          <ReplyGrid
            kind="several"
            columns={1}
            label={t("new-visit.sounds-like")}
            replies={shown.map((one) => ({
              id: one,
              words: words[one]?.name ?? one,
              chosen: one === chosen,
            }))}
            onChoose={(one, isChosen) => (isChosen ? onChoose(one, pointsOf(one)) : onChoose(undefined, []))}
          />
        </>
      )}
    </div>
  );
}
