/** Deleting for good: asked once more with what goes, done, then looked at again and told in numbers. */
import { useState } from "preact/hooks";
import { type Erased, eraseAndLook, type IdText } from "../../core/record/index.js";
import type { Problem } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { actNow } from "../state/copies.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/files.js";
import { RefusedNotice } from "./refused-notice.js";

export interface ToErase {
  readonly title: string;
  readonly says?: string;
  readonly streams?: readonly string[];
  readonly ids?: readonly IdText[];
}

interface ErasingProps {
  readonly what: ToErase;
  readonly onClose: () => void;
  readonly onErased: (erased: Erased) => void;
}

/** Asks, deletes and looks again. */
export function Erasing({ what, onClose, onErased }: ErasingProps) {
  const { store, journal, phone, settings, forget } = useApp();
  const [going, setGoing] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>();
  const erase = async (): Promise<void> => {
    setGoing(true);
    const act = actNow(phone, settings.peek(), journal.summaries.peek() ?? []);
    const erased = await eraseAndLook(store, act, what);
    setGoing(false);
    if (!erased.ok) return setProblems(erased.problems);
    await forget((what.streams ?? []).map(paramOf));
    onErased(erased.value);
  };
  return (
    <Sheet
      open
      title={what.title}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("erase.do")} onPress={() => void erase()} disabled={going} />}
    >
      {what.says !== undefined && <p>{what.says}</p>}
      <p>{t("erase.sure.says")}</p>
      {going && <Notice kind="plain" title={t("erase.going")} />}
      {problems && <RefusedNotice title={t("erase.refused")} problems={problems} />}
      <div class="acts">
        <Tool words={t("erase.sure.copy")} href={to("files")} />
      </div>
    </Sheet>
  );
}

/** What was found afterwards. */
export function ErasedTold({ erased }: { readonly erased: Erased }) {
  const { entries, blobs, shared, bodiesLeft, blobsLeft } = erased;
  const clean = bodiesLeft === 0 && blobsLeft === 0;
  return (
    <>
      {clean ? (
        <Notice kind="plain" title={t("erase.done.checked")} />
      ) : (
        <Notice kind="error" title={t("erase.left", { bodies: bodiesLeft, blobs: blobsLeft })} />
      )}
      <p class="remark">{t("erase.done.entries", { n: entries })}</p>
      <p class="remark">{t("erase.done.blobs", { n: blobs })}</p>
      {shared > 0 && <p class="remark">{t("erase.done.shared", { n: shared })}</p>}
    </>
  );
}
