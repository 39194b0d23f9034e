/** Cautions in full, worst first, telling the owner, and the gates with their three states. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { EmptyState } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { cautionLines, gateLine } from "../state/cautions-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { told } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import { Covered } from "./covered.js";
import { Top } from "./frame.js";
import { GateLineNotice } from "./gate-stands.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

function CautionsBody({ on }: { readonly on: OnDesk }) {
  const { journal } = useApp();
  const [telling, setTelling] = useState(false);
  const lines = cautionLines(on.known, on.assessment.cautions, on.visit.told);
  const [worst, ...others] = lines;
  const tell = (): void => {
    void told(
      journal,
      on.stream,
      lines.map((line) => line.id),
    );
    setTelling(false);
  };
  return (
    <>
      <Top
        back={t("findings.title")}
        href={to("findings", { visit: on.param })}
        aside={t("cautions.count", { n: lines.length })}
      />
      <main>
        <h1 class={worst ? "spoken" : "plain-title"} tabIndex={-1}>
          {t("cautions.title")}
        </h1>
        {worst ? (
          <CautionPanel {...cautionPanel(worst, "full")} />
        ) : (
          <EmptyState title={t("cautions.none")} says={t("cautions.local")} />
        )}
        {others.map((line) => (
          <CautionPanel key={line.id} {...cautionPanel(line, "small")} />
        ))}
        {worst && <p class="remark small">{t("cautions.local")}</p>}
        {worst && !on.visit.closed && (
          <div class="acts">
            <NextAction words={t("cautions.tell")} says={t("cautions.tell.says")} onPress={() => setTelling(true)} />
          </div>
        )}
        <Band heading={t("cautions.gates")}>
          {on.assessment.gates.map((gate) => (
            <GateLineNotice key={gate.gate} line={gateLine(on.telling, gate, on.visit)} />
          ))}
        </Band>
      </main>
      <Sheet
        open={telling}
        title={t("cautions.tell.sure")}
        closeWords={t("app.cancel")}
        onClose={() => setTelling(false)}
        foot={<NextAction words={t("cautions.tell.yes")} onPress={tell} />}
      >
        {lines.map((line) => (
          <p key={line.id}>{line.not}</p>
        ))}
      </Sheet>
    </>
  );
}

export const Cautions = ({ params }: { readonly params: ParamsOf<"cautions"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Covered on={on} title={t("cautions.title")}>
        <CautionsBody on={on} />
      </Covered>
    )}
  </OnVisit>
);
