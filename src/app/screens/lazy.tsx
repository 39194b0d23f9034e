/** A screen whose code is fetched when it is first shown. All of it is on the phone already, so this is short. */
import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { t } from "../texts/first.js";

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

/** Loads once; a failed load is thrown where the screen is drawn, so that the catcher around it shows it. */
export function lazy<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  Meanwhile: ComponentType = OpeningScreen,
): ComponentType<Props> & { readonly preload: () => void } {
  let loaded: ComponentType<Props> | undefined;
  const fetchOnce = async (): Promise<ComponentType<Props>> => (loaded ??= await load());
  function Lazy(props: Props) {
    const [, setThere] = useState(loaded !== undefined);
    const [failed, setFailed] = useState<Error>();
    useEffect(() => {
      if (loaded) return;
      fetchOnce().then(
        () => setThere(true),
        (error: unknown) => setFailed(error instanceof Error ? error : new Error(String(error))),
      );
    }, []);
    if (failed) throw failed;
    const Screen = loaded;
    return Screen ? <Screen {...props} /> : <Meanwhile />;
  }
  return Object.assign(Lazy, { preload: () => void fetchOnce().catch(() => undefined) });
}
