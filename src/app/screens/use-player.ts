/** Plays kept sounds, one after the other; stops when asked or when the screen goes. */
import { useEffect, useRef, useState } from "preact/hooks";
import { useApp } from "../state/app.js";

export interface Played {
  readonly id: string;
  readonly blob: string;
}

/** `playing`: whose turn it is; `failed`: this browser can't play it. */
export function usePlayer(): {
  readonly playing: string | undefined;
  readonly failed: boolean;
  readonly play: (sounds: readonly Played[]) => void;
  readonly stop: () => void;
} {
  const { store } = useApp();
  const [playing, setPlaying] = useState<string>();
  const [failed, setFailed] = useState(false);
  const audio = useRef<HTMLAudioElement | undefined>(undefined);
  const run = useRef(0);

  const stop = (): void => {
    run.current++;
    audio.current?.pause();
    setPlaying(undefined);
  };
  useEffect(() => stop, []);

  const one = async (element: HTMLAudioElement, sound: Played): Promise<void> => {
    const kept = await store.blob(sound.blob);
    if (!kept.ok || !kept.value) throw new Error(`the sound ${sound.id} is not here`);
    const address = URL.createObjectURL(new Blob([kept.value.bytes], { type: kept.value.type }));
    try {
      await new Promise<void>((resolve, reject) => {
        element.onended = () => resolve();
        element.onpause = () => resolve();
        element.onerror = () => reject(new Error(element.error?.message ?? "not played"));
        element.src = address;
        element.play().catch(reject);
      });
    } finally {
      URL.revokeObjectURL(address);
    }
  };

  const all = async (sounds: readonly Played[]): Promise<void> => {
    const mine = ++run.current;
    audio.current?.pause();
    // One element for all of them: a phone lets it go on to the next without another tap.
    const element = new Audio();
    audio.current = element;
    setFailed(false);
    try {
      for (const sound of sounds) {
        if (run.current !== mine) return;
        setPlaying(sound.id);
        await one(element, sound);
      }
    } catch {
      setFailed(run.current === mine);
    }
    if (run.current === mine) setPlaying(undefined);
  };
  return { playing, failed, play: (sounds) => void all(sounds), stop };
}
