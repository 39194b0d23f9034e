/** A dialog from the foot of the screen. Keeps the focus inside; Escape, back and the close button end it. */
import { useEffect, useId, useRef } from "preact/hooks";
import { Tool } from "./button.js";
import type { SheetProps } from "./props-frame.js";
import { useBack } from "./sheet-back.js";

export function Sheet({ open, title, closeWords, onClose, children, form = "bottom", foot }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const name = useId();
  const close = useRef(onClose);
  close.current = onClose;
  useBack(open, onClose);

  useEffect(() => {
    const element = dialog.current;
    if (element === null || !open) return;
    const before = document.activeElement;
    element.showModal();
    heading.current?.focus();
    const onCancel = (event: Event): void => {
      event.preventDefault();
      close.current();
    };
    // A second Escape closes a dialog whatever the page says; then the state has to follow.
    const onClosed = (): void => close.current();
    const onPress = (event: MouseEvent): void => {
      if (event.target === element) close.current();
    };
    element.addEventListener("cancel", onCancel);
    element.addEventListener("close", onClosed);
    element.addEventListener("click", onPress);
    return () => {
      element.removeEventListener("cancel", onCancel);
      element.removeEventListener("close", onClosed);
      element.removeEventListener("click", onPress);
      element.close();
      // The dialog has left the page by now, so the browser no longer gives the focus back by itself.
      const isLost = document.activeElement === null || document.activeElement === document.body;
      if (isLost && before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
  }, [open]);

  if (!open) return null;
  return (
    <dialog ref={dialog} class={form === "full" ? "sheet full" : "sheet"} aria-labelledby={name}>
      <header>
        <h2 id={name} ref={heading} tabIndex={-1}>
          {title}
        </h2>
        <Tool words={closeWords} onPress={onClose} />
      </header>
      <div class="sheet-body">{children}</div>
      {foot && <footer>{foot}</footer>}
    </dialog>
  );
}
