/** A line that opens what lies behind it, and closes it again. Refuses to know what that is. */
import { useId, useState } from "preact/hooks";
import type { DisclosureProps } from "./props-telling.js";

export function Disclosure({ class: look, children, inside }: DisclosureProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <>
      <button
        type="button"
        class={`discloses ${look ?? ""}`.trimEnd()}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {children}
      </button>
      <div id={id} class="disclosed" hidden={!open}>
        {open && inside()}
      </div>
    </>
  );
}
