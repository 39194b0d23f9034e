/**
 * The page that lies in every copy, for somebody who finds it in twenty years without the app. In English, like the
 * keys of the lines it explains. Knows the layout; refuses to know what was found on the car.
 */
import type { LackingBlob } from "./lacking.js";
import type { CopyManifest } from "./manifest.js";

const WHAT: Readonly<Record<CopyManifest["holds"], string>> = {
  everything: "everything one person's phone held about the cars they look after",
  new: "what was new on one person's phone since their copy before this one; keep both",
  car: "one car with all visits to it",
  visit: "one visit to a car, and what is known about that car",
};

const LACKS: Readonly<Record<LackingBlob["what"], string>> = {
  picture: "picture",
  "small-picture": "small form of a picture",
  sound: "sound",
  frozen: "sheet, limits or judgement",
  other: "file",
};

/** What a person should look for elsewhere; nothing where the copy holds all it names. */
function lackingPage(lacking: readonly LackingBlob[]): string {
  if (lacking.length === 0) return "";
  const lines = lacking.map(({ hash, of, on, what, name, at, why }) =>
    [
      `${LACKS[what]}${name === "" ? "" : ` "${name}"`} of ${of}${on === undefined ? "" : `, visit of ${on}`}`,
      `  entered ${at.slice(0, 16).replace("T", " ")} UTC`,
      `  ${why === "too-large" ? "larger than a copy may hold" : "not on the phone that wrote this copy"}`,
      `  ${hash}`,
    ].join("\n"),
  );
  return `
WHAT IS LACKING

The record names these files, and no part of this copy holds them:

${lines.join("\n")}
`;
}

/** The page for one volume. */
export const readmeOf = ({
  holds,
  made,
  volume,
  of,
  lacking = [],
}: Pick<CopyManifest, "holds" | "made" | "volume" | "of" | "lacking">): string => `\
WHAT THIS IS

This folder was written by Leadlamp, a program for looking old cars over and
keeping what was seen and measured. It holds ${WHAT[holds]}.
Written ${made}. Part ${volume} of ${of}.

Every part has the whole written record. Pictures and sounds are shared out
among the parts, so each part is worth having alone, in any order.

You do not need the program to read it: everything is plain text, JSON,
ordinary pictures and ordinary sounds.
${lackingPage(lacking)}
THE FILES

README.txt      this page
manifest.json   when it was made, how many cars, visits and entries it holds,
                and every other file with its type and length
journal.jsonl   the record itself, one entry a line
pictures/       photographs, large and small
sounds/         recordings
frozen/         the check sheets, limits and judgements as they stood at the
                time, as JSON; the questions and all shown words are in them
other/          anything else an entry names

A file in these folders is named by the SHA-256 of its bytes, in hexadecimal.
Work it out again and compare: if it differs, the file is damaged.
manifest.json holds the SHA-256 of journal.jsonl.

HOW THE LINES ARE READ

journal.jsonl is UTF-8 text with line feeds. The first line names the format.
Every further line is one JSON object that was written once and never changed:

  stream   what it is about: "car:NAME", "visit:NAME", "plan:NAME" (the work
           list of the visit of that name) or "house" (the workshop's terms)
  writer   the phone that wrote it, as a made-up name
  seq      its number, counted 1, 2, 3 for each stream and writer
  nonce    a random text that tells this entry from any other
  at       when: "wall" is milliseconds since 1 January 1970 UTC, "count"
           orders what happened in the same millisecond
  by       the person, by a made-up id; entries of kind "person" give names
  act      entries with the same act were made by one press
  kind, v  what sort of entry, and the version of that sort
  body     what was said

"stream/writer/seq/nonce" is the entry's full name. A body may list such names
under "replaces": this entry then stands instead of those. Entries of kind
"undo" name entries that no longer count. What is neither replaced nor undone
stands. Where two that differ stand, two people said different things.

A line without kind and body is what is left of an entry somebody erased for
good. Nothing of it can be got back.

Kinds that matter most: car.begun and car.named (the car's name), car.fact
(build data), car.limit (figures in its limits book), visit.opened (date,
odometer, which check sheets), visit.complaint (the owner's words), reply (an
answer: point, place, state of the car, value), note, picture and sound (they
name a file by its SHA-256), finding (something seen that no sheet asks for),
visit.closed (names the judgement at that time). A point's question stands in
the sheet the visit opened with: look in frozen/ under the hash it names.
Measured values are kept as typed, with a unit in UCUM (mm, V, bar, [in_i]).

To open it in the program again: keep the file as it was, and read it in under
Settings, Keep a copy.
`;
