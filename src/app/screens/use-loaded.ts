/** A value that is fetched once for a key; undefined until it is there. A failure is thrown where the screen is drawn. */
import { useEffect, useState } from "preact/hooks";

export function useLoaded<Value>(load: () => Promise<Value>, key: string): Value | undefined {
  const [loaded, setLoaded] = useState<{ readonly key: string; readonly value: Value }>();
  const [failed, setFailed] = useState<unknown>();
  useEffect(() => {
    let current = true;
    load().then(
      (value) => current && setLoaded({ key, value }),
      (error: unknown) => current && setFailed(error),
    );
    return () => {
      current = false;
    };
  }, [key]);
  if (failed !== undefined) throw failed;
  return loaded?.key === key ? loaded.value : undefined;
}
