/** A car or visit that is here but could not be opened, and why. */
import type { Problem } from "../../core/terms/index.js";
import { Notice } from "../parts/notice.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { SpokenTitle, Top } from "./frame.js";

export function NotOpened({ problem }: { readonly problem: Problem }) {
  return (
    <>
      <Top back={t("cars.title")} href="#/" />
      <main>
        <SpokenTitle title={t("app.not-opened")} />
        <Notice kind="error" title={t("app.not-opened")} says={problemText(problem)} />
      </main>
    </>
  );
}
