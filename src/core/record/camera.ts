/**
 * What the record asks of whoever looks through the phone's camera inside the page: a live picture, a torch where there
 * is one, shots. Refuses to know streams and video elements; those are in device/photo.
 */

/**
 * Why there is nothing to see: `refused` the person or the browser said no · `none` this phone has no camera ·
 * `busy` another app holds it · `not-offered` the browser gives pages no camera here.
 */
export type NoCamera = "refused" | "none" | "busy" | "not-offered";

/** `Shot` is whatever the device gives for a picture. */
export interface Viewfinder<Shot> {
  /** Switches the torch; absent where the phone offers none. Resolves to whether it burns now. */
  readonly torch?: (on: boolean) => Promise<boolean>;
  /** What is seen at this moment. Rejects with the device's own error when the camera has gone. */
  shoot(): Promise<Shot>;
  /** Gives the camera back; the torch goes out with it. */
  close(): void;
}

export type LookedThrough<Shot> =
  | { readonly is: "open"; readonly viewfinder: Viewfinder<Shot> }
  | { readonly is: "none"; readonly why: NoCamera };

/** `Screen` is whatever shows the live picture. */
export interface Camera<Screen, Shot> {
  /** Shows what the camera at the back sees. `onLost` is called when the phone takes it away. */
  open(screen: Screen, onLost: () => void): Promise<LookedThrough<Shot>>;
}
