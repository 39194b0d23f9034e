/** One gate: its state, what tripped it or what comes first, and its cautions. */

import { gateLine } from "../state/cautions-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { t } from "../texts/index.js";
import { MissingScreen, Plain } from "./frame.js";
import { GateLineNotice, GateStands } from "./gate-stands.js";
import { lazy, Nothing } from "./lazy.js";
import { OnVisit } from "./on-visit.js";

const LooseLine = lazy(() => import("./loose-line.js").then((file) => file.LooseLine), Nothing);

const AWAY = "drive-away";

export const Gate = ({ params }: { readonly params: ParamsOf<"gate"> }) => (
  <OnVisit param={params.visit}>
    {(on) => {
      const gate = on.assessment.gates.find((one) => one.gate === params.gate);
      if (!gate) return <MissingScreen />;
      const line = gateLine(on.telling, gate, on.visit);
      return (
        <Plain
          back={t("cautions.title")}
          href={to("cautions", { visit: on.param })}
          title={line.title}
          second={t("gate.guards", { what: line.guards })}
        >
          {/* Before the car moves what is loose is told too. */}
          {gate.drives && <LooseLine visit={on.param} stream={on.stream} />}
          {/* No car state of the round stands behind driving away: it is noted here why that is done unproven. */}
          {gate.guards === AWAY ? <GateStands on={on} gate={gate} alone /> : <GateLineNotice line={line} alone />}
        </Plain>
      );
    }}
  </OnVisit>
);
