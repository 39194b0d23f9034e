/**
 * What the record asks of whoever listens: a recording handed on in slices while it runs, so that little is lost when
 * the page is ended. Refuses to know recorders and streams; those are in device/sound.
 */

/**
 * Why nothing is recorded: `refused` the person or the browser said no · `none` this phone has no microphone ·
 * `busy` another app holds it · `not-offered` the browser records no sound here.
 */
export type NoMicrophone = "refused" | "none" | "busy" | "not-offered";

export interface Recording {
  /** What is really written, as the recorder names it. */
  readonly type: string;
  /** Ends it and gives the microphone back. Resolves after the last slice was handed on. */
  stop(): Promise<void>;
}

export type Listening =
  | { readonly is: "recording"; readonly recording: Recording }
  | { readonly is: "none"; readonly why: NoMicrophone };

export interface SoundRecorder {
  /**
   * Records as the machine sounds: nothing filtered, nothing levelled. `onSlice` gets the bytes in order, one call at a
   * time; all slices joined are one file. `onLost` is called when the phone takes the microphone away.
   */
  start(onSlice: (bytes: Uint8Array<ArrayBuffer>) => Promise<void>, onLost: () => void): Promise<Listening>;
}
