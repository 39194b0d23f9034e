/** Keeping a working copy as an edition; where it can't be, what is missing in words, and the way there. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import { type Lacks, mayKeep } from "../state/sheet-keep.js";
import type { SheetWork } from "../state/sheet-work.js";
import { keepEdition } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-work.js";
import { useSheetsAtHand } from "./use-sheets.js";

interface OfWork {
  readonly sheet: string;
  readonly work: SheetWork;
}

const wayTo = (sheet: string, { list, item }: Lacks): string | undefined => {
  if (list === undefined) return undefined;
  return item === undefined ? to("sheet-list", { sheet, list }) : to("sheet-item", { sheet, list, item });
};

export function SheetKeeping({ sheet, work }: OfWork) {
  const app = useApp();
  const { journal, phone, router } = app;
  const follows = useSheetsAtHand().some(({ id }) => id === sheet);
  const [lacks, setLacks] = useState<Lacks>();
  const [busy, setBusy] = useState(false);
  const keep = async (): Promise<void> => {
    setBusy(true);
    const hence = router.fromHere();
    const may = await mayKeep(app, work, follows);
    setLacks(may.is === "lacks" ? may.lacks : undefined);
    const kept = may.is === "sound" && (await keepEdition(journal, phone, work.draft, may.file));
    setBusy(false);
    if (kept) hence.up(to("sheet", { sheet }));
  };
  const way = lacks && wayTo(sheet, lacks);
  return (
    <>
      <p class="remark">{busy ? t("sheet-edition.keeping") : t("sheet-edition.keep.says")}</p>
      {lacks && (
        <Notice
          kind="error"
          title={t("sheet-edition.lacks")}
          says={lacks.says}
          {...(way === undefined ? {} : { action: { words: t("sheet-edition.lacks.go"), href: way } })}
        />
      )}
      <div class="acts">
        <NextAction
          words={t("sheet-edition.keep")}
          disabled={busy || work.checked === "yet"}
          onPress={() => void keep()}
        />
      </div>
    </>
  );
}
