/** Recording at a point: opened once it is written down, kept slice by slice, ended by the person or after a minute. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { NoMicrophone, Recording } from "../../core/record/sound.js";
import { useApp } from "../state/app.js";
import { holdAlive } from "../state/left-open.js";
import { beginSound, finishSound, forgetSound, keepSlice, type SoundOpen } from "../state/sound-slices.js";
import type { PointAt } from "../state/standing.js";

/** Long enough for a wheel spun down by hand; a longer one nobody listens to. Own choice. */
const LONGEST_MS = 60_000;

type Now =
  | { readonly is: "idle" | "opening" | "keeping" }
  | { readonly is: "recording"; readonly since: number }
  | { readonly is: "none"; readonly why: NoMicrophone };

interface Running {
  readonly open: SoundOpen;
  readonly recording: Recording;
  readonly since: number;
  readonly letGo: () => void;
}

export function useRecording(visit: string, at: PointAt) {
  const app = useApp();
  const { store, phone, around } = app;
  const [now, setNow] = useState<Now>({ is: "idle" });
  const running = useRef<Running | undefined>(undefined);

  /** Ends it; kept unless thrown away. */
  const end = async (keep: boolean): Promise<void> => {
    const run = running.current;
    if (!run) return;
    running.current = undefined;
    setNow({ is: "keeping" });
    const ms = Math.round(around.steadyMs() - run.since);
    await run.recording.stop();
    if (keep) await finishSound(app, run.open, ms);
    else await forgetSound(store, run.open.id);
    run.letGo();
    setNow({ is: "idle" });
  };

  const start = async (): Promise<void> => {
    setNow({ is: "opening" });
    const letGo = holdAlive("sound");
    const id = phone.nonce();
    const place: PointAt = { point: at.point, place: at.place, state: at.state };
    const door = await app.sound();
    let index = 0;
    const began = { id, visit, at: place, type: "" };
    await beginSound(store, began);
    const listening = await door.start(
      (bytes) => keepSlice(store, id, index++, bytes),
      () => void end(true),
    );
    if (listening.is === "none") {
      await forgetSound(store, id);
      letGo();
      setNow({ is: "none", why: listening.why });
      return;
    }
    const open: SoundOpen = { ...began, type: listening.recording.type };
    // The type is known only now; nothing was heard before.
    await beginSound(store, open);
    const since = around.steadyMs();
    running.current = { open, recording: listening.recording, since, letGo };
    setNow({ is: "recording", since });
  };

  const isOn = now.is === "recording";
  useEffect(() => {
    if (!isOn) return;
    const timer = setTimeout(() => void end(true), LONGEST_MS);
    return () => clearTimeout(timer);
  }, [isOn]);
  // Leaving the screen keeps what was heard.
  useEffect(() => () => void end(true), []);

  return { now, start: () => void start(), keep: () => void end(true), throwAway: () => void end(false) };
}
