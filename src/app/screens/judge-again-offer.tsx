/**
 * Offers to judge a car's visits again, where one is judged by another figure than the book has now: open visits at
 * once, closed ones when they are asked for, since each is laid out to be looked at.
 */
import { type CarState, limitsOf, sameValue } from "../../core/record/index.js";
import { Disclosure } from "../parts/disclosure.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { type VisitLine, visitLines } from "../state/car-view.js";
import { deskOf } from "../state/desks.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/limits.js";

interface OfferProps {
  readonly car: CarState;
  readonly limit: string;
}

function OfferFor({ car, limit, visit }: OfferProps & { readonly visit: VisitLine }) {
  const frozen = deskOf(useApp(), visit.stream).laid.value?.frozen;
  if (!frozen?.sheets.some(({ sheet }) => sheet.limits.some(({ id }) => id === limit))) return null;
  const [was, is] = [frozen.limits.limits, limitsOf(car)].map((all) => all.filter((one) => one.limit === limit));
  if (sameValue(was, is)) return null;
  const isThere = is && is.length > 0;
  const title = visit.closed
    ? t(isThere ? "again.offer.closed" : "again.offer.closed.without")
    : t(isThere ? "again.offer" : "again.offer.without");
  return (
    <Notice
      kind="plain"
      title={title}
      says={t("again.offer.says", { visit: visit.title })}
      action={{ words: t("again.title"), href: to("judge-again", { visit: paramOf(visit.stream) }) }}
    />
  );
}

export function JudgeAgainOffer({ car, limit }: OfferProps) {
  const { journal } = useApp();
  const visits = visitLines(journal.summaries.value ?? [], car.stream);
  const closed = visits.filter((visit) => visit.closed);
  const offers = (of: readonly VisitLine[]) =>
    of.map((visit) => <OfferFor key={visit.stream} car={car} limit={limit} visit={visit} />);
  return (
    <>
      {offers(visits.filter((visit) => !visit.closed))}
      {closed.length > 0 && (
        <Disclosure
          class="row plain"
          inside={() => (
            <>
              <p class="remark small">{t("book.closed.says")}</p>
              {offers(closed)}
            </>
          )}
        >
          <span class="row-title">{t("book.closed")}</span>
          <span class="aside small n">{closed.length}</span>
        </Disclosure>
      )}
    </>
  );
}
