/** Deleting for good: asked once more with what goes, done, then looked at again and told in numbers. */
import { useState } from "preact/hooks";
import type { Erased } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type EraseCame, type EraseWhat, eraseNow } from "../state/erasing.js";
import { to } from "../state/routes.js";
import { t } from "../texts/files.js";
import { RefusedNotice } from "./refused-notice.js";

export interface ToErase extends EraseWhat {
  readonly title: string;
  readonly says?: string;
}

/** What was found afterwards, and whether all that lay beside the record went as well. */
export interface ErasedNow extends Erased {
  readonly beside: boolean;
}

interface ErasingProps {
  readonly what: ToErase;
  readonly onClose: () => void;
  readonly onErased: (erased: ErasedNow) => void;
}

/** Asks, deletes and looks again. */
export function Erasing({ what, onClose, onErased }: ErasingProps) {
  const app = useApp();
  const [going, setGoing] = useState(false);
  const [came, setCame] = useState<Exclude<EraseCame, { readonly is: "done" }>>();
  const erase = async (): Promise<void> => {
    setGoing(true);
    setCame(undefined);
    const now = await eraseNow(app, what);
    setGoing(false);
    if (now.is === "done") return onErased({ ...now.erased, beside: now.beside });
    if (now.is === "broke") reportError(now.error);
    setCame(now);
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
      {came?.is === "refused" && <RefusedNotice title={t("erase.refused")} problems={came.problems} />}
      {came?.is === "broke" && <Notice kind="error" title={t("erase.broke")} says={t("erase.broke.do")} />}
      <div class="acts">
        <Tool words={t("erase.sure.copy")} href={to("files")} />
      </div>
    </Sheet>
  );
}

/** What was found afterwards. */
export function ErasedTold({ erased }: { readonly erased: ErasedNow }) {
  const { entries, blobs, shared, bodiesLeft, blobsLeft, unlooked, beside } = erased;
  if (unlooked) return <Notice kind="error" title={t("erase.unlooked")} says={t("erase.unlooked.do")} />;
  const clean = bodiesLeft === 0 && blobsLeft === 0;
  return (
    <>
      {!beside && <Notice kind="error" title={t("erase.beside")} says={t("erase.beside.do")} />}
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
