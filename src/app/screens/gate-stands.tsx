/** A gate that stands before this car state: what to do first. Tripped it lets nothing pass; else only with a reason. */
import { useState } from "preact/hooks";
import type { GateState } from "../../core/assess/contract.js";
import { NextAction, Tool } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { Field } from "../parts/field.js";
import { GateNotice } from "../parts/gate-notice.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type GateLine, gateLine } from "../state/cautions-view.js";
import { atHand, mayBePassed } from "../state/gates.js";
import { note } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import type { OnDesk } from "./on-visit.js";

/** A gate as its notice; `alone`: on its own page, where it leads nowhere. */
export function GateLineNotice({ line, alone }: { readonly line: GateLine; readonly alone?: boolean }) {
  const says = [line.says, line.missing, line.unproven].filter(Boolean).join(" ");
  return (
    <GateNotice
      state={line.state}
      title={line.title}
      href={alone ? undefined : line.href}
      stateWords={line.stateWords}
      {...(says === "" ? {} : { says })}
      first={line.first}
      cautions={line.cautions.map((one) => cautionPanel(one, "small"))}
    />
  );
}

function Unproven({
  on,
  line,
  open,
  onClose,
}: {
  readonly on: OnDesk;
  readonly line: GateLine;
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  const { journal } = useApp();
  const [why, setWhy] = useState("");
  const keep = (): void => {
    if (why.trim() === "") return;
    void note(journal, on.stream, why.trim(), { point: line.id });
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("gate.unproven.title", { gate: line.title })}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("gate.unproven.keep")} onPress={keep} disabled={why.trim() === ""} />}
    >
      <p>{t("gate.unproven.says")}</p>
      <Field id="unproven-why" kind="area" label={t("gate.unproven.why")} value={why} onInput={setWhy} />
    </Sheet>
  );
}

/** What tripped gates over acts of the hand warn of, over each point of the round, in a quiet viewing too. */
export function AtHand({ on }: { readonly on: OnDesk }) {
  return (
    <>
      {atHand(on.assessment).flatMap((gate) => {
        const { cautions, href } = gateLine(on.telling, gate, on.visit);
        return cautions.map((one) => <CautionPanel key={one.id} {...cautionPanel(one, "bar")} href={href} />);
      })}
    </>
  );
}

interface GateStandsProps {
  readonly on: OnDesk;
  readonly gate: GateState;
  /** On its own page. */
  readonly alone?: boolean;
}

export function GateStands({ on, gate, alone = false }: GateStandsProps) {
  const [noting, setNoting] = useState(false);
  const line = gateLine(on.telling, gate, on.visit);
  return (
    <>
      <GateLineNotice line={line} alone={alone} />
      {mayBePassed(gate) && !on.visit.closed && (
        <div class="acts">
          <Tool words={t("gate.unproven")} onPress={() => setNoting(true)} />
        </div>
      )}
      <Unproven on={on} line={line} open={noting} onClose={() => setNoting(false)} />
    </>
  );
}
