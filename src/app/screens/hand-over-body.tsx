/** For whom it is, what is still open, the files to take along, and the hand-over as it will be read. */
import { useEffect, useRef, useState } from "preact/hooks";
import { AUDIENCES, type Audience } from "../../core/terms/index.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Title } from "../parts/title.js";
import type { HandoverGround } from "../state/handover-ground.js";
import { type MadeHandover, openLines, readerOf } from "../state/handover-made.js";
import { printDrawn } from "../state/handover-phone.js";
import { to } from "../state/routes.js";
import { t } from "../texts/hand-over.js";
import { Top } from "./frame.js";
import { HandOverFiles } from "./hand-over-files.js";
import { HandOverPage } from "./hand-over-page.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnPlan } from "./on-plan.js";
import { type Trends, useMade } from "./use-made.js";

const HandOverWearing = lazy(() => import("./hand-over-wearing.js").then((file) => file.HandOverWearing), Nothing);

function StillOpen({ ground, made }: { readonly ground: HandoverGround; readonly made: MadeHandover }) {
  const lines = openLines(ground, made);
  return (
    <Band heading={t("hand-over.open")} aside={lines.length > 0 ? String(lines.length) : ""}>
      {lines.length === 0 && <ListRow title={t("hand-over.open.none")} second={t("hand-over.open.none.says")} />}
      {lines.map(({ id, words, href }) => (
        <ListRow key={id} title={words} {...(href === undefined ? {} : { href })} />
      ))}
    </Band>
  );
}

export function HandOverBody({ on }: { readonly on: OnPlan }) {
  const [reader, setReader] = useState<Audience>(readerOf(on.who));
  const [trends, setTrends] = useState<Trends>();
  const [isPrinting, setPrinting] = useState(false);
  const [ground, made] = useMade(on, reader, trends);
  const page = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!isPrinting) return;
    const isDrawn = (): boolean =>
      [...(page.current?.querySelectorAll("img") ?? [])].every((img) => img.complete && img.naturalWidth > 0);
    void printDrawn(isDrawn).then(() => setPrinting(false));
  }, [isPrinting]);
  return (
    <>
      <Top back={t("work.title")} href={to("work", { visit: on.param })} />
      <main class="hand-over">
        <Title title={t("hand-over.title")} second={t("hand-over.says")} />
        <div class="form">
          <ReplyGrid
            kind="choice"
            label={t("hand-over.for")}
            columns={1}
            replies={AUDIENCES.map((id) => ({
              id,
              words: t(`hand-over.for.${id}`),
              says: t(`hand-over.for.${id}.says`),
              chosen: id === reader,
            }))}
            onChoose={(id) => setReader(AUDIENCES.find((one) => one === id) ?? reader)}
          />
        </div>
        <HandOverWearing car={on.car} visit={on.visit} onTold={setTrends} />
        <StillOpen ground={ground} made={made} />
        <HandOverFiles made={made} isPrinting={isPrinting} onPrint={() => setPrinting(true)} />
        <div ref={page}>
          <HandOverPage made={made} whole={isPrinting} />
        </div>
      </main>
    </>
  );
}
