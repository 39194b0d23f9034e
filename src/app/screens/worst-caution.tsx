/** The worst DANGER or WARNING that stands over a visit, as a bar that leads to all of them. */
import type { CautionDue } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { worstCaution } from "../state/cautions-view.js";
import type { Knowledge } from "../state/knowledge.js";
import { to } from "../state/routes.js";
import { cautionPanel } from "./caution-panels.js";

export function WorstCaution({
  known,
  due,
  told,
  visit,
}: {
  readonly known: Knowledge;
  readonly due: readonly CautionDue[];
  readonly told: VisitState["told"];
  /** The visit in addresses. */
  readonly visit: string;
}) {
  const line = worstCaution(known, due, told);
  return line ? <CautionPanel {...cautionPanel(line, "bar")} href={to("cautions", { visit })} /> : null;
}
