/** The glass one signs on. Gives what was drawn as points in its own box; refuses to know who signs and what for. */
import { useEffect, useRef } from "preact/hooks";
import SignaturePad from "signature_pad";
import { Tool } from "./button.js";

export interface SigningPadProps {
  /** Name of the field. */
  readonly label: string;
  readonly clearWords: string;
  readonly onDrawn: (glass: {
    readonly width: number;
    readonly height: number;
    readonly strokes: readonly (readonly { readonly x: number; readonly y: number }[])[];
  }) => void;
}

export function SigningPad({ label, clearWords, onDrawn }: SigningPadProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const pad = useRef<SignaturePad | undefined>(undefined);
  const told = useRef(onDrawn);
  told.current = onDrawn;

  function tell(): void {
    const box = canvas.current?.getBoundingClientRect();
    if (!box || !pad.current) return;
    const strokes = pad.current.toData().map(({ points }) => points.map(({ x, y }) => ({ x, y })));
    told.current({ width: box.width, height: box.height, strokes });
  }

  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    const ratio = Math.max(1, window.devicePixelRatio);
    const { width, height } = element.getBoundingClientRect();
    element.width = Math.round(width * ratio);
    element.height = Math.round(height * ratio);
    element.getContext("2d")?.scale(ratio, ratio);
    const own = new SignaturePad(element, { minWidth: 1.2, maxWidth: 2.6, penColor: getComputedStyle(element).color });
    pad.current = own;
    own.addEventListener("endStroke", tell);
    return () => own.off();
  }, []);

  return (
    <div class="signing">
      <p class="label" aria-hidden="true">
        {label}
      </p>
      <canvas ref={canvas} class="signing-glass" role="img" aria-label={label} />
      <Tool
        words={clearWords}
        onPress={() => {
          pad.current?.clear();
          tell();
        }}
      />
    </div>
  );
}
