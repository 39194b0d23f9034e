/**
 * The one place that joins core to the phone: opens the store, hands everything to the screens, and fetches what
 * judges and the round once the first screen stands.
 */
import "./style/index.css";
import { common, complaints, sheets } from "virtual:leadlamp/index";
import { effect, type ReadonlySignal, signal } from "@preact/signals";
import { render } from "preact";
import type { FileDoor } from "../core/record/files.js";
import type { Entry } from "../core/record/index.js";
import type { PictureKeeper } from "../core/record/photo.js";
import { takeLaunched } from "../device/files/launched.js";
import packWorker from "../device/files/worker.js?worker&url";
import pictureWorker from "../device/photo/worker.js?worker&url";
import { hashOf, makeNonce, openStore } from "../device/store/index.js";
import planWorker from "../device/work/worker.js?worker&url";
import { tellKept } from "./kept-event.js";
import { whenStill } from "./parts/sheet-back.js";
import { preloadRound } from "./screens/screens.js";
import { Shell } from "./screens/shell.js";
import { type App, AppContext } from "./state/app.js";
import { openJournal } from "./state/journal.js";
import { linkTapped, startRouter } from "./state/router.js";
import { defaultSettings, keepSettings, recallAddress, rememberAddress } from "./state/settings.js";
import { surroundings, textShelf } from "./surroundings.js";
import { decimalComma } from "./texts/first.js";
import { startWorker } from "./trusted.js";
import { followSwitch, startUpdates, type Updates } from "./updates.js";

followSwitch();

const VERSION = "0.1.0";
const STORE = "leadlamp";
/** One short tick for a kept reply, two where a reading is too close to call. */
const TICK = [12];
const NOT_KEPT = [80, 60, 80];

const remembered = textShelf();
const usesComma = new Intl.NumberFormat()
  .formatToParts(1.5)
  .some(({ type, value }) => type === "decimal" && value === ",");
const settings = keepSettings(remembered, defaultSettings(makeNonce(), usesComma));

/** Opened as the phone opens it, at no certain address. */
const isPlainStart = location.hash === "";

/** A phone that ended the app behind the person's back starts it at its plain address: go back to where they were. */
function returnToPlace(): void {
  const last = recallAddress(remembered);
  if (new URLSearchParams(location.search).has("demo") && location.hash === "")
    history.replaceState(null, "", "#/demo");
  if (location.hash !== "" || !last.startsWith("#/visit/")) return;
  history.replaceState(null, "", "#/");
  // The round itself knows better which point: a killed browser may have forgotten the last seconds of this address.
  history.pushState({ from: "#/" }, "", last.replace(/(\/round)\/.*$/, "$1"));
}
returnToPlace();

const router = startRouter(window, whenStill);
addEventListener("click", (event) => {
  const href = linkTapped(event);
  if (href === undefined) return;
  event.preventDefault();
  router.go(href);
});
effect(() => {
  if (router.at.value) rememberAddress(remembered, location.hash);
});

effect(() => {
  const { theme, larger, leftHand, comma } = settings.value;
  const { dataset } = document.documentElement;
  const put = (name: string, value: string | undefined): void => {
    if (value === undefined) delete dataset[name];
    else dataset[name] = value;
  };
  put("theme", theme === "phone" ? undefined : theme);
  put("targets", larger ? "large" : undefined);
  put("hand", leftHand ? "left" : undefined);
  decimalComma.value = comma;
});

const store = openStore(STORE);
const phone = { now: () => Date.now(), nonce: makeNonce, hash: hashOf };

/** Filled when the first screen stands; until then there is no newer version to wait. */
const updates = signal<Updates | undefined>(undefined);
const asked: Updates = {
  kept: readThrough((now) => now.kept, "fetching"),
  waiting: readThrough((now) => now.waiting, false),
  agree: () => updates.peek()?.agree(),
};
function readThrough<Value>(of: (now: Updates) => ReadonlySignal<Value>, before: Value): ReadonlySignal<Value> {
  const through = signal(before);
  effect(() => {
    if (updates.value) through.value = of(updates.value).value;
  });
  return through;
}
const browser = surroundings(asked, VERSION);
const around: typeof browser = {
  ...browser,
  vibrate: (pattern) => {
    if (settings.peek().vibration) browser.vibrate(pattern);
  },
};

function onKept(entries: readonly Entry[]): void {
  tellKept(entries);
  if (entries.some(({ kind }) => kind === "reply")) around.vibrate(TICK);
  // The first thing kept is the moment to ask: the person has something to lose now.
  if (around.persisted.peek() === false && entries.some(({ kind }) => kind === "car.begun")) void around.persist();
}
const journal = openJournal(store, phone, () => ({ id: settings.peek().person, name: settings.peek().name }), onKept);

effect(() => {
  if (journal.unkept.value.some(({ problem }) => problem)) around.vibrate(NOT_KEPT);
});

const judging = () => import("./state/judging.js");
const compiler: App["compiler"] = {
  compile: async (...frozen) => (await import("./import/plan-editions.js")).planEditions.compile(...frozen),
};
const sheetTools: App["sheetTools"] = async () => (await import("./import/sheet-tools.js")).sheetTools;

const shelf = { sheets, common, complaints };
/** The camera's queue and the file picker come with the round; they are asked for by a tap only. */
let queue: PictureKeeper<Blob, AbortSignal> | undefined;
const pictures: PictureKeeper<Blob, AbortSignal> = {
  async keep(source, abort) {
    const { startPictureQueue } = await import("../device/photo/index.js");
    queue ??= startPictureQueue(() => startWorker(pictureWorker));
    return queue.keep(source, abort);
  },
  get waiting() {
    return queue?.waiting ?? 0;
  },
};
const camera: App["camera"] = async () => (await import("../device/photo/index.js")).browserCamera;
const sound: App["sound"] = async () => (await import("../device/sound/index.js")).browserSound(startWorker);
const planner: App["planner"] = async () =>
  (await import("../device/work/index.js")).startPlanner(() => startWorker(planWorker));
const printer: App["printer"] = async () => (await import("../device/pdf/index.js")).sheetPrinter(startWorker);
const loadFiles = () => import("../device/files/index.js");
const files: FileDoor<File> = {
  pick: async (wish) => (await loadFiles()).browserFiles.pick(wish),
  ready: (content) => ({ hand: async () => (await loadFiles()).browserFiles.ready(content).hand() }),
  share: async (text) => (await loadFiles()).browserFiles.share(text),
  copy: async (text) => (await loadFiles()).browserFiles.copy(text),
};
const packer: App["packer"] = async () => (await loadFiles()).packerWith(() => startWorker(packWorker));

const app: App = {
  router,
  settings,
  remembered,
  forget: async (names) => (await import("./forget-texts.js")).forgetTexts(names),
  journal,
  store,
  phone,
  shelf,
  compiler,
  sheetTools,
  judging,
  pictures,
  camera,
  files,
  packer,
  sound,
  around,
  planner,
  printer,
  openDemo: async () => (await import("./demo/open-demo.js")).openDemo(app),
};

/** What the phone ended with the page: a recording is kept as far as it went, and a camera is gone back to. */
async function takeUpLeftOpen(): Promise<void> {
  const heard = await store.setting("open.sound");
  if (heard.ok && heard.value) await (await import("./left-open.js")).keepCutSound(app, heard.value);
  const found = isPlainStart ? await store.setting("open.camera") : undefined;
  if (found?.ok && found.value) (await import("./left-open.js")).backToCamera(app, found.value);
}

const root = document.getElementById("app");
if (root)
  render(
    <AppContext.Provider value={app}>
      <Shell />
    </AppContext.Provider>,
    root,
  );

/** After the first screen is painted: the service worker, then what the first reply needs. */
requestAnimationFrame(() =>
  setTimeout(() => {
    updates.value = startUpdates();
    preloadRound();
    void common.source();
    void takeUpLeftOpen();
    // What takes a file the phone opens with this app is fetched when there is one.
    takeLaunched(
      window,
      (file) => void import("./state/launched-sheets.js").then(({ sheetLaunched }) => sheetLaunched(router, file)),
    );
    // Someone is in the middle of a visit: what judges it is wanted next.
    void journal.refresh().then(() => {
      const isUnderWay = journal.summaries.peek()?.some((one) => one.of === "visit" && !one.closed && one.replies > 0);
      if (isUnderWay) void judging();
    });
  }),
);
