/** How a value worked out came about, and the list of such values over one point. Fetched when a finding or point has one. */
import { Disclosure } from "../parts/disclosure.js";
import { Band } from "../parts/pool.js";
import { type Working, type WorkingNeeds, workedOver, workingOf } from "../state/working.js";
import { t } from "../texts/working.js";
import type { OnDesk } from "./on-visit.js";
import { useLoaded } from "./use-loaded.js";

/** The judgement with the functions of the trade; undefined until both are there. */
function useNeeds({ desk, known, assessment }: OnDesk): WorkingNeeds | undefined {
  const trade = useLoaded(() => import("../state/trade-work.js"), "trade");
  const [set, session] = desk.ground();
  if (!trade || !assessment || !set || !session) return undefined;
  return { ground: { core: set.core, session, sheets: set.sheets }, known, trade };
}

function Lines({ working }: { readonly working: Working }) {
  return (
    <>
      {working.taken !== undefined && <p>{working.taken}</p>}
      {working.names !== undefined && (
        <p>
          <span class="worked-kind">{t("working.formula")}</span> {working.names}
        </p>
      )}
      {working.numbers !== undefined && (
        <p>
          <span class="worked-kind">{t("working.numbers")}</span> {working.numbers}
        </p>
      )}
      {working.calls.map((call) => (
        <div key={call.id} class="worked-call">
          <p>
            <span class="worked-kind">{call.says}</span> {call.formula}
          </p>
          {call.given.map((one) => (
            <p key={one}>{one}</p>
          ))}
          <p class="small">
            <span class="worked-kind">{t("working.source")}</span> {call.source}
          </p>
        </div>
      ))}
      {working.source !== undefined && (
        <p class="small">
          <span class="worked-kind">{t("working.source")}</span> {working.source}
        </p>
      )}
      {!working.isKnown && <p>{working.result}</p>}
    </>
  );
}

interface WorkedProps {
  readonly on: OnDesk;
  readonly id: string;
  readonly place: string;
}

/** The formula of one value, with this visit's numbers put in. */
export function WorkedPanel({ on, id, place }: WorkedProps) {
  const needs = useNeeds(on);
  const working = needs && workingOf(needs, id, place);
  return working ? (
    <div class="worked">
      <Lines working={working} />
    </div>
  ) : null;
}

/** Every value worked out from one point at one place, each with its formula behind it. */
export function WorkedValues({
  on,
  point,
  place,
  lit = false,
}: {
  readonly on: OnDesk;
  readonly point: string;
  readonly place: string;
  /** Inside the light of the open point. */
  readonly lit?: boolean;
}) {
  const needs = useNeeds(on);
  const all = needs ? workedOver(needs, point, place) : [];
  if (all.length === 0) return null;
  const rows = all.map((one) => (
    <Disclosure
      key={`${one.id} ${one.place}`}
      class="row plain"
      inside={() => <WorkedPanel on={on} id={one.id} place={one.place} />}
    >
      <span>
        <span class="row-title">{one.name}</span>
        <span class="small n">{one.result}</span>
      </span>
    </Disclosure>
  ));
  return lit ? (
    <div class="worked-list">
      <h3>{t("working.title")}</h3>
      {rows}
    </div>
  ) : (
    <Band heading={t("working.title")}>{rows}</Band>
  );
}
