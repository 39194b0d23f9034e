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

/** One line of a spectrum or of the beats. */
export interface HeardLine {
  /** Hz. */
  readonly at: number;
  /** Of a spectrum dB below the loudest a file can hold; of beats, how far the loudness swings, 0 to 1 of its mean. */
  readonly height: number;
}

/** A line that stands out of what is around it. */
export interface HeardPeak extends HeardLine {
  /** How wide it may be placed either way, Hz. */
  readonly within: number;
}

/**
 * What a recording holds. All recordings are taken apart in the same way, whatever their length, so that two lie on one
 * scale; how loud they were at the ear is in none of them.
 */
export interface Heard {
  readonly seconds: number;
  /** Loudness over time, dB below the loudest a file can hold, one every `step` seconds. */
  readonly levels: readonly number[];
  readonly step: number;
  /** Level in bands of a twelfth of an octave by their middle frequency. */
  readonly bands: readonly HeardLine[];
  /** Strongest first. */
  readonly peaks: readonly HeardPeak[];
  /** How its loudness swings: something rough that comes round beats, whatever its own pitch. */
  readonly beats: readonly HeardLine[];
  readonly beatPeaks: readonly HeardPeak[];
}

export type Listened =
  | { readonly is: "heard"; readonly heard: Heard }
  /** `short`: under a second and a half · `silent`: nothing in it · `unreadable`: this browser can't take it apart. */
  | { readonly is: "nothing"; readonly why: "short" | "silent" | "unreadable" };

export interface SoundEar {
  listen(bytes: Uint8Array<ArrayBuffer>): Promise<Listened>;
}
