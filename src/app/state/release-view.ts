/**
 * Handing back in words: what stands against it and where that is put right, who looked a second time, what is due after
 * some way, how it stands. Pure; what refuses is core/plan's word.
 */
import {
  type Against,
  type AnsweredBadly,
  type ComplaintStands,
  mayBeDriven,
  mayBeMoved,
  progressOf,
  type Recheck,
  standsAgainst,
  type WorkTold,
} from "../../core/plan/index.js";
import type { Release, VisitState } from "../../core/record/index.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/release.js";
import { figure } from "../texts/round.js";
import type { Telling } from "./because.js";
import { atPlace, capital, faultSays, placeName, pointName } from "./knowledge.js";
import { standsWords } from "./part-way.js";
import { jobTitle, partTitle } from "./plan-words.js";
import { rechecksIn } from "./rechecks-in.js";
import type { JudgedVisit } from "./release-anew.js";
import { type Handing, handingBack, worksIn } from "./release-facts.js";
import { to } from "./routes.js";

export interface AgainstLine {
  readonly id: string;
  readonly weight: Against["weight"];
  readonly title: string;
  readonly second: string;
  /** Where it is put right. */
  readonly href?: string;
  /** A second look, said on the page itself: of this job (`job@place`). */
  readonly look?: string;
}

export interface LookLine {
  /** `job@place` */
  readonly id: string;
  readonly job: string;
  readonly place: string;
  readonly title: string;
  readonly second: string;
  readonly doneBy: string;
  /** Somebody has looked, whoever it was. */
  readonly isLooked: boolean;
}

export interface DueLine {
  readonly id: string;
  readonly title: string;
  readonly second: string;
  readonly isDone: boolean;
}

export interface ReleaseView {
  readonly against: readonly AgainstLine[];
  readonly mayBeDriven: boolean;
  /** Handed back not to be driven: on a trailer, or left standing. */
  readonly mayBeMoved: boolean;
  readonly looks: readonly LookLine[];
  readonly due: readonly DueLine[];
  readonly released?: Release;
}

export interface Asked extends Handing {
  readonly telling: Telling;
  readonly param: string;
}

export function releaseView(
  on: Asked,
  complaints: readonly ComplaintStands[],
  earlier: readonly VisitState[],
  later: readonly JudgedVisit[],
): ReleaseView {
  const works = worksIn(on, later);
  const against = standsAgainst(handingBack(on, works, complaints));
  const released = on.said.release.at(-1)?.value;
  return {
    against: against.map((one, index) => againstLine(on, one, index)),
    mayBeDriven: mayBeDriven(against),
    mayBeMoved: mayBeMoved(against),
    looks: works.flatMap((work) => lookLine(on, work)),
    due: rechecksIn(on, works, earlier).map((one) => dueLine(on, one)),
    ...(released ? { released } : {}),
  };
}

function againstLine(on: Asked, one: Against, index: number): AgainstLine {
  return { id: `${one.is} ${index}`, weight: one.weight, ...saidOf(on, one) };
}

type Said = Omit<AgainstLine, "id" | "weight">;

function saidOf(on: Asked, one: Against): Said {
  const { telling, param: visit, known, said, today } = on;
  switch (one.is) {
    case "dangerous":
      return {
        title: `${faultSays(known, one.fault, [], telling.who).says}${atPlace(known, one.place)}`,
        second: t(one.isDone ? "release.dangerous.done" : "release.dangerous"),
        href: to("finding", { visit, fault: one.fault, place: one.place }),
      };
    case "gate":
      return {
        title: known.words.gates[one.gate]?.name ?? one.gate,
        second: t(
          one.isNoteOld
            ? "release.gate.old-note"
            : one.weight === "told"
              ? "release.gate.told"
              : `release.gate.${one.state}`,
        ),
        href: to("gate", { visit, gate: one.gate }),
      };
    case "no-gate":
      return { title: t("release.no-gate"), second: t("release.no-gate.says") };
    case "loose":
      return {
        title: one.words.join(" / "),
        second: t("release.loose"),
        href: to("plan", { visit, page: "left-loose" }),
      };
    case "part": {
      const progress = progressOf(said, today);
      const stands = progress.ok
        ? progress.value.parts.find(
            ({ job, place, part }) => job === one.job && place === one.place && part === one.part,
          )
        : undefined;
      return {
        title: partTitle(telling, said, `${one.job}@${one.place}/${one.part}`),
        second: t("release.part", { stands: standsWords(stands) }),
        href: to("part", { visit, job: one.job, place: one.place, part: one.part }),
      };
    }
    case "complaint":
      return {
        title: `“${one.text}”`,
        second: t(one.isAnswered ? "release.complaint.needs" : "release.complaint"),
        href: to("visit", { visit }),
      };
    default:
      return ofJob(on, one);
  }
}

function ofJob(on: Asked, one: Extract<Against, { readonly job: string }>): Said {
  const { telling, param: visit, known } = on;
  const { job, place } = one;
  const title = jobTitle(telling, `${job}@${place}`);
  const href = to("job", { visit, job, place });
  switch (one.is) {
    case "wanting": {
      const points = one.points.map((point) => badlyText(on, point)).join("; ");
      const [first] = one.points;
      const key = one.weight === "told" ? "release.wanting.told" : "release.wanting";
      return { title, second: t(key, { points }), href: (first && pointHref(on, first)) ?? href };
    }
    case "unmeasured":
    case "for-others":
    case "unasked": {
      const points = [...new Set(one.points.map(({ point }) => pointName(known, point)))].join(", ");
      if (one.is !== "unmeasured") return { title, second: t(`release.${one.is}`, { points }), href };
      const [first] = one.points;
      return first
        ? { title, second: t("release.unmeasured", { points }), href: pointHref(on, first) ?? href }
        : { title, second: t("release.unmeasured.own"), href };
    }
    case "second-look":
      return {
        title,
        second: one.isSame
          ? t("release.second-look.same")
          : t("release.second-look", { at: t(`release.at.${one.at}`) }),
        look: `${job}@${place}`,
      };
    case "own-look":
      return { title, second: t("release.own-look") };
    case "unfinished":
    case "waiting":
      return { title, second: t(`release.${one.is}`), href };
    case "part":
      return { title, second: t("release.part", { stands: "" }), href };
  }
}

/** `Float, rear right: 0.24 mm, major`; what nobody could judge says why. */
function badlyText({ known }: Asked, { point, place, says, is }: AnsweredBadly): string {
  const judged =
    is === "unfit" || is === "unsettled" ? t(`release.wanting.${is}`) : is === "in order" ? "" : t(`mark.${is}`);
  return `${pointName(known, point)}${atPlace(known, place)}: ${[says, judged].filter(Boolean).join(", ")}`;
}

/** The address of the point in the round: in the car state it is asked in. */
function pointHref({ assessment, param }: Asked, at: { readonly point: string; readonly place: string }) {
  const bare = (id: string): string => id.replaceAll("-", "_");
  const asked = assessment.asked.find((one) => bare(one.point) === bare(at.point) && one.place === at.place);
  return asked && to("point", { visit: param, state: asked.state, place: asked.place, point: asked.point });
}

function lookLine({ telling, said }: Asked, work: WorkTold): readonly LookLine[] {
  if (work.secondLook === undefined || work.doneOn === undefined) return [];
  const { job, place, looked, lookers } = work;
  const who = [...new Set(lookers)].join(", ");
  const done = said.jobSteps.get(`${job}@${place}`)?.findLast(({ value }) => value.step === "done");
  return [
    {
      id: `${job}@${place}`,
      job,
      place,
      title: jobTitle(telling, `${job}@${place}`),
      second: t(`release.look.${looked}`, { who }),
      isLooked: looked !== "none",
      doneBy: (done && said.people.get(done.by)?.at(-1)?.value.name) ?? "",
    },
  ];
}

function dueLine({ telling, known }: Asked, one: Recheck): DueLine {
  const { id, is, job, places, km, at, on, done } = one;
  const where = places.map((place) => placeName(known, place)).join(", ");
  const date = plainDay(on);
  return {
    id,
    title:
      is === "wheel-nuts"
        ? capital(t("release.due.nuts", { places: where }))
        : t("release.due.job", { job: jobTitle(telling, `${job ?? ""}@${places[0] ?? "car"}`) }),
    second: done
      ? t("release.due.done", { who: done.who, date: plainDay(done.on) })
      : at === undefined
        ? t("release.due.km", { km, date })
        : t("release.due.at", { km, at: figure(at), date }),
    isDone: done !== undefined,
  };
}
