/**
 * What an owner writes to the workshop after a look: what was found in his own words, with days, short enough for a
 * message. Every line comes from the hand-over made of the record; nothing is judged here. Pure.
 */
import { isSettled, type LetteredFinding, type ReadingTold, say } from "../../core/report/index.js";
import { plainDay } from "../texts/days.js";
import { figure, t } from "../texts/season.js";
import { unitShown } from "../texts/units.js";
import type { MadeHandover } from "./handover-made.js";
import type { Season } from "./season.js";

/** Lines of one kind before the rest is counted: a message is read on a phone too. Own choice. */
const MOST = 8;
/** Of what was noticed of one finding; all of it stands in the file. */
const MOST_NOTICED = 3;

/** What somebody noticed or measured, without what only makes it surer. */
const NOTICED: readonly string[] = ["seen", "heard", "felt", "told", "measured", "found"];

const placed = ({ title, where }: { readonly title: string; readonly where: string }): string =>
  where === "" ? title : `${title}, ${where}`;

function foundLine({ because, close, ...one }: LetteredFinding): string {
  const noticed = because.flatMap((step) =>
    step.is !== "limit" && NOTICED.includes(step.is) && !step.supports ? [step.words] : [],
  );
  const what = [placed(one), ...[...new Set(noticed)].slice(0, MOST_NOTICED)].join("; ");
  return close ? t("message.close", { what }) : what;
}

/** A figure with that of last time beside it, both as they were typed. */
function readingLine({ typed, typedUnit, unit, last, ...one }: ReadingTold): string {
  const now = `${typed.map(figure).join(" / ")} ${unitShown(typedUnit ?? unit)}`;
  const line = t("message.reading", { what: placed(one), now });
  if (last === undefined || last.on === "") return line;
  const then = `${last.value.split(" / ").map(figure).join(" / ")} ${unitShown(last.unit)}`;
  return t("message.reading.last", { line, then, when: plainDay(last.on) });
}

function listed(heading: string, lines: readonly string[]): readonly string[] {
  if (lines.length === 0) return [];
  const rest = lines.length - MOST;
  return [
    "",
    heading,
    ...lines.slice(0, MOST).map((line) => `- ${line}`),
    ...(rest > 0 ? [`- ${t("message.more", { n: rest })}`] : []),
  ];
}

/** The whole message; `noted`: notes of the visit as written. */
export function workshopMessage(
  { model, words }: Pick<MadeHandover, "model" | "words">,
  { season, noted }: { readonly season: Season | undefined; readonly noted: readonly string[] },
): string {
  const { car, visit, first } = model;
  const what = season === undefined ? t("purpose.season") : t(`season.${season}`);
  const standing = model.findings.filter((one) => !isSettled(one));
  const unseen = first.looked.notSeen + first.looked.cannotReach;
  const odometer = visit.odometer && `${figure(visit.odometer.value)} ${unitShown(visit.odometer.unit)}`;
  return [
    t("message.head", { car: car.name, what, when: plainDay(visit.at.slice(0, 10)) }),
    ...(odometer === undefined ? [] : [t("message.odometer", { odometer })]),
    t("message.says", {
      word: say(words, `owner.${first.verdict.owner}`),
      verdict: say(words, `verdict.${first.verdict.is}`),
    }),
    ...(standing.length === 0 ? ["", t("message.nothing")] : []),
    ...listed(t("message.found"), standing.map(foundLine)),
    ...listed(
      t("message.complaints"),
      first.complaints.flatMap(({ words: said, answer }) =>
        answer?.is === "not-met" ? [] : [t("message.said", { said })],
      ),
    ),
    ...listed(t("message.noted"), noted),
    ...listed(t("message.readings"), model.readings.filter(({ typed }) => typed.length > 0).map(readingLine)),
    "",
    ...(unseen > 0 ? [t("message.unseen", { n: unseen })] : []),
    t("message.foot"),
  ].join("\n");
}
