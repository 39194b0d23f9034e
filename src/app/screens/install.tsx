/** How Leadlamp gets onto the home screen. */
import { NextAction } from "../parts/button.js";
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";

export function Install() {
  const { around } = useApp();
  const offer = around.install.value;
  return (
    <Plain back={t("settings.title")} href={to("settings")} title={t("install.title")}>
      <div class="reading">
        <p>{t("install.says")}</p>
        {around.installed ? (
          <p>{t("install.there")}</p>
        ) : (
          <>
            <p>{t("install.android")}</p>
            <p>{t("install.ios")}</p>
            <p>{t("install.desktop")}</p>
          </>
        )}
      </div>
      {offer && (
        <div class="acts">
          <NextAction words={t("install.now")} onPress={() => void offer()} />
        </div>
      )}
    </Plain>
  );
}
