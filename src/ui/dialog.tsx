import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface DialogProps {
  title: string;
  /** Fills the whole screen, for what must not be overlooked. */
  whole?: boolean;
  onClose: () => void;
  children: ComponentChildren;
}

/** Something laid over the screen. Escape, the backdrop and the phone's back gesture close it; focus returns. */
export function Dialog({ title, whole, onClose, children }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = element.current;
    const before = document.activeElement;
    dialog?.showModal();
    return () => {
      dialog?.close();
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <dialog
      ref={element}
      class={whole ? 'over whole' : 'over'}
      aria-label={title}
      onCancel={(event) => {
        // A file box inside says `cancel` as well, when the camera is left without a picture: that closes nothing.
        if (event.target !== element.current) return;
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => {
        if (event.target === element.current) onClose();
      }}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <div class="stack">
        <h2>{title}</h2>
        {children}
      </div>
    </dialog>
  );
}
