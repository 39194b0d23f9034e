/** What Leadlamp is and is not, where limits and grades come from, the licence. */
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import { t } from "../texts/index.js";
import { NoticeWords } from "./first-run.js";
import { Plain } from "./frame.js";

export function About() {
  const { around } = useApp();
  return (
    <Plain
      back={t("settings.title")}
      href={to("settings")}
      title={t("about.title")}
      second={t("settings.version", { version: around.version })}
    >
      <NoticeWords />
      <div class="reading">
        <p>{t("about.limits")}</p>
        <p>{t("about.words")}</p>
        <p>{t("about.licence")}</p>
      </div>
    </Plain>
  );
}
