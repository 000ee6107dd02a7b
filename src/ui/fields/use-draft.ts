import { useEffect, useRef, useState } from 'preact/hooks';

/** Long enough not to write at every key, short enough that a dropped page costs at most the last word. Our choice. */
const SETTLE_MS = 500;

/** What could not be stored, by box: it is there again, with its sentence, when the person comes back to it. */
const leftUnsaved = new Map<string, string>();

/**
 * What is being typed, given on when the typing rests or the box is left. While a draft is open the box shows it and
 * not the stored value, so a late write never pulls letters from under the fingers. `onSettle` says whether the text
 * could be taken.
 */
export function useDraft(box: string, stored: string, onSettle: (text: string) => boolean) {
  const [draft, setDraft] = useState<string | null>(leftUnsaved.get(box) ?? null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const latest = useRef({ draft, onSettle });
  latest.current = { draft, onSettle };

  function settle() {
    clearTimeout(timer.current);
    const { draft: text, onSettle: give } = latest.current;
    if (text === null) return;
    if (give(text)) leftUnsaved.delete(box);
    else leftUnsaved.set(box, text);
  }
  useEffect(() => settle, []);

  return {
    text: draft ?? stored,
    onInput(text: string) {
      setDraft(text);
      latest.current = { ...latest.current, draft: text };
      clearTimeout(timer.current);
      timer.current = setTimeout(settle, SETTLE_MS);
    },
    /** Leaving the box: give the draft on and, if `keep` is false, show the stored value again. */
    onLeave(keep: boolean) {
      settle();
      if (!keep) setDraft(null);
    },
  };
}
