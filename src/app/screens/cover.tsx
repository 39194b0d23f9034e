/** The cover itself: the way back to the round first, uncovering as a step of its own. */
import { NextAction, Tool } from "../parts/button.js";
import { EmptyState } from "../parts/notice.js";
import { Pool } from "../parts/pool.js";
import { uncover } from "../state/covers.js";
import { to } from "../state/routes.js";
import { t } from "../texts/viewing.js";
import { SpokenTitle, Top } from "./frame.js";
import type { OnDesk } from "./on-visit.js";
import { type Section, Sections } from "./sections.js";

export interface CoverProps {
  readonly on: OnDesk;
  /** The screen below, by its name in the section row or its own title. */
  readonly title: string;
  readonly section?: Section;
}

export function Cover({ on, title, section }: CoverProps) {
  return (
    <>
      <Top back={t("round.back")} href={to("visit", { visit: on.param })} />
      <main>
        <SpokenTitle title={title} />
        <Pool>
          <EmptyState title={t("viewing.covered")} says={t("viewing.covered-says")} />
          <div class="acts">
            <NextAction words={t("viewing.back-to-round")} href={to("round", { visit: on.param })} />
            <Tool words={t("viewing.uncover")} onPress={() => uncover(on.stream)} />
          </div>
        </Pool>
      </main>
      {section && <Sections visit={on.param} here={section} />}
    </>
  );
}
