/** Takes kept recordings apart, one after the other, when a screen asks for them. Refuses to draw. */
import { useEffect, useState } from "preact/hooks";
import { useApp } from "../state/app.js";
import type { HeardOne, ToHear } from "../state/heard-view.js";

/** What was heard so far; undefined until all are listened to. */
export function useHeard(ones: readonly ToHear[]): readonly HeardOne[] | undefined {
  const { store, sound } = useApp();
  const [heard, setHeard] = useState<readonly HeardOne[]>();
  const which = ones.map(({ id }) => id).join(" ");
  useEffect(() => {
    let isGone = false;
    const all = async (): Promise<void> => {
      const listener = await sound();
      const done: HeardOne[] = [];
      for (const one of ones) {
        const kept = await store.blob(one.blob);
        const listened = kept.ok && kept.value ? await listener.listen(kept.value.bytes) : ({ is: "gone" } as const);
        if (isGone) return;
        done.push({ ...one, listened });
      }
      setHeard(done);
    };
    setHeard(undefined);
    void all();
    return () => {
      isGone = true;
    };
    // Which recordings they are decides; the list is made anew at every drawing.
  }, [which, store, sound]);
  return heard;
}
