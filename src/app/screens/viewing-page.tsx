/** A viewing as a whole: what is claimed, which pictures to take, what must be cleared before a price, how long papers are kept. */
import { USUAL_MINUTES } from "../../core/record/index.js";
import { guardsPrice } from "../../core/terms/run.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { settleText } from "../state/because.js";
import { carTitle } from "../state/car-view.js";
import { gateLine } from "../state/cautions-view.js";
import { isUncovered, uncover } from "../state/covers.js";
import { capital, placeName } from "../state/knowledge.js";
import { isoNow } from "../state/new-visit.js";
import { cameraHref } from "../state/picture-spot.js";
import { picturesWanted } from "../state/pictures-wanted.js";
import { type ParamsOf, to } from "../state/routes.js";
import { viewingClock } from "../state/viewing-clock.js";
import { lookingTime } from "../state/visit-acts.js";
import { t } from "../texts/viewing.js";
import { t as page } from "../texts/viewing-page.js";
import { Claims } from "./claims.js";
import { Plain } from "./frame.js";
import { type OnPlan, WithPlan } from "./on-plan.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { PapersKept } from "./papers-kept.js";
import { useNow } from "./use-now.js";

/** Before arrival the clock stands; it starts when somebody says that they are there. */
function Start({ on }: { readonly on: OnDesk }) {
  const { journal, phone, router } = useApp();
  const clock = viewingClock(on.visit, useNow());
  const round = to("round", { visit: on.param });
  const begin = async (): Promise<void> => {
    const hence = router.fromHere();
    if (await lookingTime(journal, on.stream, { from: isoNow(phone.now()), minutes: USUAL_MINUTES })) hence.go(round);
  };
  if (on.visit.closed) return null;
  return (
    <div class="acts">
      {clock ? (
        <NextAction words={page("viewing-page.go-on", { n: clock.left })} href={round} onward />
      ) : (
        <>
          <NextAction words={page("viewing-page.start", { n: USUAL_MINUTES })} onPress={() => void begin()} onward />
          <Tool words={page("viewing-page.no-clock")} href={round} />
        </>
      )}
    </div>
  );
}

function Pictures({ on }: { readonly on: OnDesk }) {
  const wanted = picturesWanted(on);
  if (wanted.length === 0) return null;
  const lacking = wanted.filter(({ taken }) => taken === 0);
  return (
    <Band heading={page("viewing-page.pictures")}>
      <p class="remark n">
        {page("viewing-page.pictures.says", { n: wanted.length - lacking.length, of: wanted.length })}
      </p>
      {[...lacking, ...wanted.filter(({ taken }) => taken > 0)].map(({ asked, taken }) => (
        <ListRow
          key={`${asked.point} ${asked.place}`}
          title={settleText(on.telling, { point: asked.point, place: "car" })}
          {...(asked.place === "car" ? {} : { second: capital(placeName(on.known, asked.place)) })}
          aside={taken === 0 ? page("viewing-page.pictures.wanted") : page("viewing-page.pictures.taken", { n: taken })}
          {...(on.visit.closed ? {} : { href: cameraHref(on.param, { at: "point", point: asked }) })}
        />
      ))}
    </Band>
  );
}

/** What stands before a figure, and the way to the figures. Covered while a seller may read along. */
function BeforePrice({ on }: { readonly on: OnDesk }) {
  if (on.quiet && !on.visit.closed && !isUncovered(on.stream))
    return (
      <Band heading={page("viewing-page.price")}>
        <p class="remark">{t("viewing.covered-says")}</p>
        <div class="acts">
          <Tool words={t("viewing.uncover")} onPress={() => uncover(on.stream)} />
        </div>
      </Band>
    );
  const gates = on.assessment.gates.filter(({ guards, state }) => guardsPrice(guards) && state !== "cleared");
  return (
    <Band heading={page("viewing-page.price")}>
      {gates.length === 0 && <p class="remark">{page("viewing-page.price.none")}</p>}
      {gates.map((gate) => {
        const line = gateLine(on.telling, gate, on.visit);
        return (
          <ListRow
            key={gate.gate}
            title={line.title}
            second={line.says}
            href={to("gate", { visit: on.param, gate: gate.gate })}
          />
        );
      })}
      <ListRow
        title={page("viewing-page.figures")}
        second={page("viewing-page.figures.says")}
        href={to("hand-over", { visit: on.param })}
      />
    </Band>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  return (
    <>
      <Start on={on} />
      <Claims on={on} />
      <Pictures on={on} />
      <BeforePrice on={on} />
      <PapersKept on={on} />
    </>
  );
}

export const ViewingPage = ({ params }: { readonly params: ParamsOf<"viewing"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Plain back={carTitle(on.car)} href={to("visit", { visit: on.param })} title={page("viewing-page.title")}>
        <WithPlan on={on}>{(planned) => <Body on={planned} />}</WithPlan>
      </Plain>
    )}
  </OnVisit>
);
