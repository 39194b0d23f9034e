/** Offers to judge a car's open visits again, where one is judged by another figure than the book has now. */
import { type CarState, limitsOf, sameValue } from "../../core/record/index.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { visitLines } from "../state/car-view.js";
import { deskOf } from "../state/desks.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/index.js";

interface OfferProps {
  readonly car: CarState;
  readonly limit: string;
}

function OfferFor({ car, limit, visit, title }: OfferProps & { readonly visit: string; readonly title: string }) {
  const frozen = deskOf(useApp(), visit).laid.value?.frozen;
  if (!frozen?.sheets.some(({ sheet }) => sheet.limits.some(({ id }) => id === limit))) return null;
  const [was, is] = [frozen.limits.limits, limitsOf(car)].map((all) => all.filter((one) => one.limit === limit));
  if (sameValue(was, is)) return null;
  return (
    <Notice
      kind="plain"
      title={t(is && is.length > 0 ? "again.offer" : "again.offer.without")}
      says={t("again.offer.says", { visit: title })}
      action={{ words: t("again.title"), href: to("judge-again", { visit: paramOf(visit) }) }}
    />
  );
}

export function JudgeAgainOffer({ car, limit }: OfferProps) {
  const { journal } = useApp();
  const open = visitLines(journal.summaries.value ?? [], car.stream).filter((visit) => !visit.closed);
  return (
    <>
      {open.map(({ stream, title }) => (
        <OfferFor key={stream} car={car} limit={limit} visit={stream} title={title} />
      ))}
    </>
  );
}
