/** Read once before anything else: what Leadlamp is not, and what keeps a person safe. */
import { NextAction } from "../parts/button.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { t } from "../texts/first.js";

/** The same words as on the page about Leadlamp. */
export function NoticeWords() {
  return (
    <div class="reading">
      <p>{t("notice.helps")}</p>
      <p>
        <strong>{t("notice.no-test")}</strong> {t("notice.no-data")}
      </p>
      <p>{t("notice.safe")}</p>
      <p>{t("notice.kept")}</p>
    </div>
  );
}

export function FirstRun() {
  const { settings } = useApp();
  const read = (): void => {
    settings.value = { ...settings.value, noticeRead: true };
  };
  return (
    <main>
      <Title title={t("notice.title")} />
      <NoticeWords />
      <div class="acts">
        <NextAction words={t("notice.read")} onPress={read} />
      </div>
    </main>
  );
}
