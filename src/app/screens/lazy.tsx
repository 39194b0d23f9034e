/** A screen whose code is fetched when it is first shown. All of it is on the phone already, so this is short. */
import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { t } from "../texts/first.js";
import { laterStyles } from "./later-styles.js";

/** Nothing is said before a second has passed: most screens are there long before. */
const SAY_OPENING_AFTER_MS = 1_000;

/** Title-less ground, and after a second one line. */
export function OpeningScreen() {
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), SAY_OPENING_AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <main class="opening" aria-busy="true">
      {slow && <p>{t("app.opening")}</p>}
    </main>
  );
}

/** In place of a piece that is not there yet and needs no word about it. */
export const Nothing = (): null => null;

type Lazy<Props> = ComponentType<Props> & { readonly preload: () => void };

/** A screen or piece after the first reply: drawn when its code and the later styles are there. */
export const lazy = <Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  Meanwhile: ComponentType = OpeningScreen,
): Lazy<Props> => loadedOnce(() => Promise.all([load(), laterStyles()]).then(([screen]) => screen), Meanwhile);

/** A screen on the way to the first reply: its styles came with the start. */
export const onTheWay = <Props extends object>(load: () => Promise<ComponentType<Props>>): Lazy<Props> =>
  loadedOnce(load, OpeningScreen);

const ASKED_AGAIN_AFTER_MS = 300;
const later = <Value,>(load: () => Promise<Value>): Promise<Value> =>
  new Promise((resolve) => setTimeout(() => resolve(load()), ASKED_AGAIN_AFTER_MS));

/** Loads once; a failed load is thrown where the screen is drawn, so that the catcher around it shows it. */
function loadedOnce<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  Meanwhile: ComponentType,
): Lazy<Props> {
  let loaded: ComponentType<Props> | undefined;
  // A worker that changes over or a dead moment of the phone must cost no screen: what does not come is asked for twice.
  const fetchOnce = async (): Promise<ComponentType<Props>> => (loaded ??= await load().catch(() => later(load)));
  function Loaded(props: Props) {
    const [, setThere] = useState(loaded !== undefined);
    const [failed, setFailed] = useState<Error>();
    useEffect(() => {
      // Also when it is there: it may have come between the drawing and this.
      fetchOnce().then(
        () => setThere(true),
        (error: unknown) => setFailed(error instanceof Error ? error : new Error(String(error))),
      );
    }, []);
    if (failed) throw failed;
    const Screen = loaded;
    return Screen ? <Screen {...props} /> : <Meanwhile />;
  }
  return Object.assign(Loaded, { preload: () => void fetchOnce().catch(() => undefined) });
}
