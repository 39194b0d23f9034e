/** Settings of this phone: light, targets, hand, figures, name, what is kept, the demo, versions. */
import { useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { Switch, UnitSwitch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import type { Settings } from "../state/settings.js";
import { rounded, t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { useLoaded } from "./use-loaded.js";

/** Fetched apart: most phones look at the settings without it. */
const HouseBand = lazy(() => import("./house-band.js").then((file) => file.HouseBand), Nothing);

const THEMES = ["phone", "under-the-car", "daylight"] as const;
const SWITCHES = [
  ["larger", "larger"],
  ["leftHand", "left-hand"],
  ["comma", "comma"],
  ["vibration", "vibration"],
] as const;
const BYTES_IN_MB = 1_000_000;

function Looks() {
  const { settings } = useApp();
  const set = (part: Partial<Settings>): void => {
    settings.value = { ...settings.value, ...part };
  };
  const now = settings.value;
  return (
    <Band>
      <div class="form">
        <p class="label">{t("settings.theme")}</p>
        <UnitSwitch
          label={t("settings.theme")}
          choices={THEMES.map((id) => ({ id, words: t(`settings.theme.${id}`) }))}
          chosen={now.theme}
          onChoose={(id) => set({ theme: THEMES.find((one) => one === id) ?? now.theme })}
        />
      </div>
      {SWITCHES.map(([key, text]) => (
        <Switch
          key={key}
          id={`set-${text}`}
          label={t(`settings.${text}`)}
          says={t(`settings.${text}.says`)}
          on={now[key]}
          onChange={(on) => set({ [key]: on })}
          words={{ on: t("app.on"), off: t("app.off") }}
        />
      ))}
      <div class="form">
        <Field
          id="set-name"
          kind="text"
          label={t("settings.name")}
          help={t("settings.name.help")}
          value={now.name}
          onInput={(name) => set({ name })}
          autocomplete="name"
        />
      </div>
    </Band>
  );
}

function Storage() {
  const { around, journal } = useApp();
  const [refused, setRefused] = useState(false);
  const used = useLoaded(around.usedBytes, "used");
  const persisted = around.persisted.value;
  const ask = (): void => void around.persist().then((granted) => setRefused(!granted));
  return (
    <Band heading={t("settings.storage")} aside={t(`storage.${journal.health.value.is}`)}>
      <p class="remark">{persisted ? t("settings.storage.protected") : t("settings.storage.unprotected")}</p>
      {used !== undefined && (
        <p class="remark small">{t("settings.storage.room", { used: rounded(used / BYTES_IN_MB, 1) })}</p>
      )}
      {refused && <p class="remark">{t("settings.storage.refused")}</p>}
      {!persisted && (
        <div class="acts">
          <Tool words={t("settings.storage.ask")} onPress={ask} />
        </div>
      )}
    </Band>
  );
}

function DemoBand() {
  const { journal, store } = useApp();
  const [asking, setAsking] = useState(false);
  const [gone, setGone] = useState(false);
  const streams = (journal.summaries.value ?? []).flatMap((one) => (one.demo ? [one.stream] : []));
  const remove = (): void => {
    setAsking(false);
    void store.removeStreams(streams).then((removed) => {
      setGone(removed.ok);
      return journal.refresh();
    });
  };
  if (gone) return <Notice kind="plain" title={t("settings.demo.gone")} />;
  if (streams.length === 0) return null;
  return (
    <Band>
      <ListRow title={t("settings.demo")} second={t("settings.demo.says")} onPress={() => setAsking(true)} />
      <Sheet
        open={asking}
        title={t("settings.demo.sure")}
        closeWords={t("app.cancel")}
        onClose={() => setAsking(false)}
        foot={<NextAction words={t("settings.demo")} onPress={remove} />}
      >
        <p>{t("settings.demo.says")}</p>
      </Sheet>
    </Band>
  );
}

export function SettingsScreen() {
  const { around } = useApp();
  return (
    <Plain back={t("cars.title")} href="#/" title={t("settings.title")}>
      <Looks />
      <Storage />
      <HouseBand />
      <DemoBand />
      <Band>
        <ListRow title={t("settings.files")} second={t("settings.files.says")} href={to("files")} />
        <ListRow title={t("settings.install")} href={to("install")} />
        <ListRow title={t("settings.sheets")} href={to("sheets")} />
        <ListRow title={t("gauges.title")} href={to("gauges")} />
        <ListRow title={t("visit.reckoner")} href={to("reckoner")} />
        <ListRow
          title={t("settings.about")}
          href={to("about")}
          aside={t("settings.version", { version: around.version })}
        />
      </Band>
      {around.updateWaits.value && (
        <div class="acts">
          <NextAction words={t("update.take")} onPress={around.takeUpdate} />
        </div>
      )}
    </Plain>
  );
}
