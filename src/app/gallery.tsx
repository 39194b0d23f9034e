/**
 * Every part in every state, for looking at while developing and for tests. Not part of the built app. Pages by
 * `?page=`; `?theme=`, `?targets=large` and `?hand=left` as the settings would set them.
 */
import { type ComponentType, render } from "preact";
import "./style/index.css";
import "./style/later.css";
import "./gallery/gallery.css";
import { CautionsPage } from "./gallery/cautions-page.js";
import { DatesPage } from "./gallery/dates-page.js";
import { EntriesPage, PricePage } from "./gallery/entries-page.js";
import { FindingsPage } from "./gallery/findings-page.js";
import { FramePage } from "./gallery/frame-page.js";
import { MarksPage } from "./gallery/marks-page.js";
import { PlanningPage } from "./gallery/planning-page.js";
import { PlansPage } from "./gallery/plans-page.js";
import { InchPage, ReadingPage } from "./gallery/reading-page.js";
import { OwnerPage, RoundPage } from "./gallery/round-page.js";
import { WorkPage } from "./gallery/work-page.js";

const PAGES: Readonly<Record<string, ComponentType>> = {
  round: RoundPage,
  owner: OwnerPage,
  reading: ReadingPage,
  inch: InchPage,
  findings: FindingsPage,
  cautions: CautionsPage,
  work: WorkPage,
  planning: PlanningPage,
  dates: DatesPage,
  entries: EntriesPage,
  price: PricePage,
  frame: FramePage,
  plans: PlansPage,
  marks: MarksPage,
};

const asked = new URLSearchParams(location.search);
for (const [name, key] of [
  ["theme", "data-theme"],
  ["targets", "data-targets"],
  ["hand", "data-hand"],
] as const) {
  const value = asked.get(name);
  if (value !== null) document.documentElement.setAttribute(key, value);
}

function Index() {
  return (
    <main class="app">
      <h1>Parts</h1>
      <ul>
        {Object.keys(PAGES).map((page) => (
          <li key={page}>
            <a href={`?page=${page}`}>{page}</a>
          </li>
        ))}
      </ul>
    </main>
  );
}

const Page = PAGES[asked.get("page") ?? ""] ?? Index;
const root = document.getElementById("gallery");
if (root) render(<Page />, root);
