import { describe, expect, it } from "vitest";
import { soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { wholeVisit } from "../../../../tests/support/handover-whole.js";
import { handover } from "./build.js";
import { readingsCsv, workCsv } from "./csv.js";
import { factsOf, missingFacts } from "./facts.js";
import { toHtml } from "./html.js";
import { toIcs } from "./ics.js";
import type { HandoverInput } from "./input.js";
import { handoverPages } from "./pages.js";
import { toText } from "./text.js";

const READERS = ["technician", "owner", "buyer"] as const;
const SIGNS: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'" };
/** What a page says once its tags are off. */
const readOff = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&(?:amp|lt|gt|quot|#39);/g, (sign) => SIGNS[sign] ?? sign);
const made = (more: Partial<HandoverInput> = {}) => {
  const model = handover(wholeVisit(more));
  const pages = handoverPages(model, WORDS);
  return { model, pages, html: toHtml(pages, WORDS), text: toText(pages, WORDS) };
};

describe("HO40 the same facts stand in every form", () => {
  it.each(READERS)("for a %s", (reader) => {
    const { model, html, text } = made({ for: reader });
    const facts = factsOf(model, WORDS);
    expect(new Set(facts.map(({ is }) => is)).size).toBeGreaterThan(7);
    expect(missingFacts(facts, readOff(html))).toEqual([]);
    expect(missingFacts(facts, text)).toEqual([]);
  });
  it("notices a fact that is missing", () => {
    const { model, text } = made();
    const gone = missingFacts(factsOf(model, WORDS), text.replaceAll("0.17 ± 0.04", ""));
    expect(gone.map(({ is }) => is)).toEqual(["finding", "reading"]);
  });
});

describe("HO50 one file of HTML", () => {
  const png = "data:image/png;base64,iVBORw0KGgo=";
  it("asks for nothing: no address but pictures in themselves, no script, nothing to send", () => {
    const { pages } = made();
    const html = toHtml(pages, WORDS, { pictures: new Map([["aa11", png]]), font: new Uint8Array([1, 2, 3, 4]) });
    const addresses = [...html.matchAll(/(?:src|href|action|data|url)\s*[=(]\s*["']?([^"')\s>]+)/g)].map(
      ([, to]) => to,
    );
    expect(addresses.filter((to) => !/^(?:data:|#)/.test(to ?? ""))).toEqual([]);
    expect(addresses).toContain(png);
    expect(html).toContain("data:font/woff2;base64,AQIDBA==");
    expect(html.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(
      /https?:|<script|<link|<iframe|@import|\son\w+=/i,
    );
    expect(html).toContain("default-src &#39;none&#39;");
  });
  it("takes a picture that is an address elsewhere for a missing one", () => {
    const { pages } = made();
    for (const url of ["https://elsewhere.example/a.png", "data:text/html;base64,PGI+", `${png}" onload="x`]) {
      const html = toHtml(pages, WORDS, { pictures: new Map([["aa11", url]]) });
      expect(html).not.toContain("<img");
      expect(html).toContain("Picture not in this file: Left sill from below");
    }
  });
  it("names its language, title, table heads and pictures", () => {
    const { pages } = made();
    const html = toHtml(pages, WORDS, { pictures: new Map([["aa11", png]]) });
    expect(html).toContain('<html lang="en">');
    expect(html).toContain("<title>Hand-over, workshop copy: Merle GT</title>");
    expect(html).toMatch(/<th scope="col"/);
    expect(html).toMatch(/<th scope="row"/);
    expect(html).toContain('alt="Picture: Left sill from below"');
    expect(html).toContain("@page{size:A4");
    expect([...html.matchAll(/<img(?![^>]* alt=")/g)]).toEqual([]);
  });
  it("gives each cell that says something the head of its column, for a screen too narrow for columns", () => {
    const { pages } = made();
    const head = [{ text: "Point" }, { text: "Typed", isFigure: true }, { text: `Why "it" is` }];
    const rows = [{ cells: ["Rock", "0.2", "Felt"] }, { cells: ["Pads", "", "None"] }];
    const html = toHtml({ ...pages, blocks: [{ is: "table", table: { caption: "C", head, rows } }] }, WORDS);
    expect(html).toContain('<td dir="auto" class="figure" data-head="Typed">0.2</td>');
    expect(html).toContain('data-head="Why &quot;it&quot; is">Felt</td>');
    expect(html).toContain('<td dir="auto" class="figure"></td>');
    // On screen only: paper is wide enough, and keeps its columns.
    expect(html).toMatch(
      /@media screen and \(max-width:30em\)\{[^@]*td\[data-head\]::before\{content:attr\(data-head\)/,
    );
  });
});

describe("HO60 comma-separated values", () => {
  it("keep numbers as numbers and give every limit a row", () => {
    const rows = readingsCsv(handover(wholeVisit()), WORDS).split("\r\n");
    expect(rows[1]).toContain("RR,whl.float,Bearing float,rear right,0.17,0.04,mm,0.17 / 0.16,lim.float,over,0.15,mm");
    expect(rows[1]).toMatch(/,0\.11,mm,2029-04-02$/);
    expect(rows[2]).toContain("FL,brk.heat,Hub heat,front left,-3,0,Cel,'-3,,");
    expect(rows).toHaveLength(4);
    expect(rows[3]).toBe("");
  });
  it("list work with hours, cost and the owner's word; what is not known is empty, not nought", () => {
    const [, first, second] = workCsv(handover(wholeVisit()), WORDS).split("\r\n");
    expect(first).toContain(
      "soon,500,km,2031-06-15,1.5,2,3,210,260.5,400,EUR,200,250,380,2 × wheel bearing,,by,2031-06-01",
    );
    expect(second).toContain("watch,,,,0.17,0.25,0.33,,,,,,,,,,no,,the car goes under a cover,Otto Lindqvist");
  });
  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"])(
    "guards %j, which a table program would work out",
    (words) => {
      const [job] = wholeVisit().jobs;
      if (job === undefined) throw new Error("no job");
      const csv = workCsv(handover(wholeVisit({ jobs: [{ ...job, title: words }] })), WORDS);
      expect(csv).toContain(`,'${words.trim()},`);
    },
  );
  it("put quotes round commas, quotes and nothing else, with CR LF at every end (RFC 4180)", () => {
    const [job] = wholeVisit().jobs;
    if (job === undefined) throw new Error("no job");
    const csv = workCsv(handover(wholeVisit({ jobs: [{ ...job, title: 'a "b", c\nd' }] })), WORDS, { bom: true });
    expect(csv.startsWith("\ufeffnumber,job,work")).toBe(true);
    expect(csv).toContain('"a ""b"", c d"');
    expect(csv.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });
});

describe("HO70 a calendar", () => {
  const lines = (more: Partial<HandoverInput> = {}) => toIcs(handover(wholeVisit(more)), WORDS);
  it("holds an all-day event for every date that has a day, with a stamp that is given", () => {
    const ics = lines();
    expect(ics.match(/BEGIN:VEVENT/g)).toHaveLength(4);
    expect(ics).toContain("DTSTART;VALUE=DATE:20310620\r\nDTEND;VALUE=DATE:20310621\r\n");
    expect(ics.match(/DTSTAMP:20310504T142000Z/g)).toHaveLength(4);
    expect(ics).toContain("TRIGGER:-PT15H");
    expect(ics).not.toContain("VTODO");
    expect(ics.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n")).toBe(true);
    expect(ics.endsWith("END:VCALENDAR\r\n")).toBe(true);
  });
  it("holds what comes every month once, with the rule that ends it; its day is on it like any other", () => {
    const model = handover(wholeVisit({ dates: [{ id: "look", is: "other", words: "look", on: "2031-07-28" }] }));
    const dates = model.dates.map((one) => (one.is === "other" ? { ...one, monthlyUntil: "2031-11-30" } : one));
    const events = toIcs({ ...model, dates }, WORDS)
      .split("BEGIN:VEVENT")
      .filter((event) => event.includes("RRULE"));
    expect(events).toHaveLength(1);
    expect(events[0]).toContain(
      "DTSTART;VALUE=DATE:20310728\r\nDTEND;VALUE=DATE:20310729\r\nRRULE:FREQ=MONTHLY;UNTIL=20311130\r\n",
    );
  });
  it("keeps the name of an event when its day and words change, and gives no two the same", () => {
    const uids = (ics: string) => ics.match(/UID:.*/g) ?? [];
    const before = uids(lines());
    const dates = [{ id: "t1", is: "re-torque", words: "all nuts", on: "2031-07-01" }] as const;
    expect([...uids(lines({ dates, madeAt: "2031-06-01T08:00:00Z" }))].sort()).toEqual([...before].sort());
    expect(new Set(before).size).toBe(before.length);
  });
  it("breaks lines at 75 octets and never inside a character; what is escaped reads as it was", () => {
    const words = `${"Räder ".repeat(30)}; a, b \\ ${"🙂".repeat(40)}`;
    const ics = lines({ dates: [{ id: "t1", is: "other", words, on: "2031-07-01" }] });
    const encoder = new TextEncoder();
    for (const line of ics.split("\r\n")) expect(encoder.encode(line).length).toBeLessThanOrEqual(75);
    const summary = ics.replaceAll("\r\n ", "").match(/SUMMARY:(.*Räder.*)/)?.[1] ?? "";
    expect(summary.replace(/\\([\\;,])/g, "$1")).toContain(words);
    expect(ics.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });
  it("leaves out what is no day of the calendar, and is a calendar without any", () => {
    expect(lines({ dates: [{ id: "t1", is: "other", words: "x", on: "2031-02-30" }] })).not.toContain("20310230");
    expect(toIcs(handover(soundVisit()), WORDS)).not.toContain("VEVENT");
  });
});

const NASTY = `a\u0000b\u001b[31m </style><script>alert(1)</script> "quoted" & 'so' \u202eesrever עברית 🙂 \ud800 ${"long ".repeat(2000)}`;
describe("HO30 whatever was written, the document stands", () => {
  it("carries it escaped, without controls and turned directions, and loses no letter", () => {
    const base = wholeVisit();
    const [one, ...rest] = base.faults;
    if (one === undefined) throw new Error("no finding");
    const more: Partial<HandoverInput> = {
      car: { name: NASTY, facts: [{ name: NASTY, value: NASTY }] },
      complaints: [{ id: "c", words: NASTY }],
      faults: [{ ...one, title: NASTY, where: NASTY, cause: NASTY }, ...rest],
    };
    const { model, html, text } = made(more);
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html).not.toContain("<script");
    for (const form of [html, text, toIcs(model, WORDS), workCsv(model, WORDS)]) {
      expect(form).not.toMatch(/(?![\r\n\t])\p{Cc}|[\u202a-\u202e]|\p{Cs}/u);
    }
    expect(text).toContain("long ".repeat(1999));
    expect(missingFacts(factsOf(model, WORDS), readOff(html))).toEqual([]);
    expect(missingFacts(factsOf(model, WORDS), text)).toEqual([]);
  });
  it.each(READERS)("reads well for a %s when nothing at all was looked at", (reader) => {
    const empty: Partial<HandoverInput> = { sheets: [], looked: { sound: 0 }, gates: [] };
    const pages = handoverPages(handover(soundVisit({ ...empty, for: reader })), WORDS);
    const text = toText(pages, WORDS);
    expect(text).toContain("It is not shown that it may be driven.");
    expect(text).toContain("Nothing was looked at.");
    expect(text).not.toMatch(/undefined|NaN|\{|\}/);
    expect(toHtml(pages, WORDS)).not.toMatch(/undefined|NaN/);
  });
});
