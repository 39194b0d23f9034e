/** Brings the demo in, then goes to its car. */
import { useEffect, useState } from "preact/hooks";
import { useApp } from "../state/app.js";
import { OpeningScreen } from "./lazy.js";

export function Demo() {
  const { openDemo } = useApp();
  const [failed, setFailed] = useState<unknown>();
  useEffect(() => {
    openDemo().catch((error: unknown) => setFailed(error));
  }, [openDemo]);
  if (failed !== undefined) throw failed;
  return <OpeningScreen />;
}
