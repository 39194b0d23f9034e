/** A condition of rows in a spoken sentence. Pure; decides nothing. */
import {
  type Asked,
  type Condition,
  EACH,
  EACH_WITHIN,
  type PlaceList,
  type Scaled,
  type Term,
} from "../../core/expr/work.js";
import { t as shared } from "../texts/index.js";
import { relationWords } from "../texts/relations.js";
import { t } from "../texts/sheet-rules.js";
import { kindWords, type SheetNames } from "./sheet-names.js";

type Names = Pick<SheetNames, "spoken" | "fault">;

/** All terms in one sentence part; a join of another kind inside it stands in brackets. */
export function sayCondition(names: Names, { join, terms }: Condition): string {
  const parts = terms.map((term) => {
    const said = sayTerm(names, term);
    const mixed = term.is === "group" && !term.not && term.hold.join !== join && typeof term.hold.join === "string";
    return mixed && terms.length > 1 ? `(${said})` : said;
  });
  if (typeof join === "number") return t("term.at-least", { n: join, terms: parts.join("; ") });
  return parts.join(t(join === "all" ? "term.and" : "term.or"));
}

/** One term as it would be said. */
export function sayTerm(names: Names, term: Term): string {
  const { spoken } = names;
  const word = (of: Asked, one: string | number): string =>
    typeof one === "number" ? String(one) : `“${spoken.word(of.name, one)}”`;
  switch (term.is) {
    case "yes":
      return t(term.not ? "term.no" : "term.yes", { of: sayAsked(names, term.of) });
    case "one-of": {
      const words = term.words.map((one) => word(term.of, one)).join(t("term.or"));
      return t(term.not ? "term.none-of" : "term.one-of", { of: sayAsked(names, term.of), words });
    }
    case "includes": {
      const params = { of: sayAsked(names, term.of), word: spoken.word(term.of.name, term.word) };
      return t(term.not ? "term.lacks" : "term.includes", params);
    }
    default:
      return term.not ? t("term.not", { term: bare(names, term) }) : bare(names, term);
  }
}

function bare(names: Names, term: Exclude<Term, { is: "yes" | "one-of" | "includes" }>): string {
  const { spoken } = names;
  switch (term.is) {
    case "word":
      return t(`term.word.${term.sign}`, {
        of: sayAsked(names, term.of),
        word: spoken.word(term.of.name, term.word),
      });
    case "figure": {
      const than = typeof term.than === "number" ? String(term.than) : sayScaled(names, term.than);
      return t("term.figure", { of: sayScaled(names, term.of), sign: t(`term.sign.${term.sign}`), than });
    }
    case "band":
      return sayBand(names, term);
    case "more":
      return t("term.more", { of: sayScaled(names, term.of), than: sayScaled(names, term.than) });
    case "unanswered":
      return t("term.unanswered", { of: sayAsked(names, term.of) });
    case "found":
      return t("term.found", {
        fault: names.fault(term.fault),
        at: term.at === "" ? "" : ` ${sayPlace(term.at)}`,
      });
    case "places": {
      const list = sayList(term.list);
      if (term.hold === null) return t("term.places.there", { list });
      const hold = sayCondition(names, term.hold);
      return t(term.every ? "term.places.every" : "term.places.some", { list, hold });
    }
    case "group":
      return sayCondition(names, term.hold);
  }
}

function sayBand(names: Names, { of, sign, grade }: Extract<Term, { is: "band" }>): string {
  const said = { of: sayAsked(names, of), grade: shared(`grade.${grade}`) };
  if (sign === ">=") return t("term.band.at-least", said);
  if (sign === "<" && grade === "advisory") return t("term.band.inside", said);
  if (sign === "==") return t("term.band.only", said);
  return t("term.band", { ...said, sign: t(`term.sign.${sign}`) });
}

/** What is read, where and when. */
function sayAsked({ spoken }: Pick<Names, "spoken">, { name, at, when }: Asked): string {
  const bareName = spoken.name(name);
  const of =
    at === ""
      ? bareName
      : at === EACH || at === EACH_WITHIN
        ? t("term.at.each", { of: bareName })
        : at === "opposite"
          ? t("term.at.opposite", { of: bareName })
          : t("term.at", { of: bareName, at: sayPlace(at) });
  if (when === undefined) return of;
  return t(when === "last" ? "term.last" : "term.since", { of });
}

const sayScaled = (names: Names, { factor, of }: Scaled): string =>
  factor === 1 ? sayAsked(names, of) : t("term.scaled", { factor, of: sayAsked(names, of) });

const NAMED = ["opposite", "axle", "side"] as const;

const stepsOf = (at: string): readonly string[] =>
  at.split(".").filter((step) => step !== EACH && step !== EACH_WITHIN);

/** A chain of relations in words, without the place a quantifier goes through. */
export function sayPlace(at: string): string {
  return stepsOf(at)
    .map((step) => {
      const known = NAMED.find((one) => one === step);
      return known ? t(`term.place.${known}`) : t("term.place", { name: relationWords(step) });
    })
    .join(", ");
}

/** The places a quantifier goes through. */
function sayList(list: PlaceList): string {
  if ("kind" in list) return kindWords(list.kind);
  const name = stepsOf(list.relation).map(relationWords).join(", ");
  return t("term.list.relation", { name });
}
