import { useEffect, useRef, useState } from 'preact/hooks';

/** Long enough not to write at every key, short enough that a dropped page costs at most the last word. Our choice. */
const SETTLE_MS = 500;

/** What could not be stored, by box: it is there again, with its sentence, when the person comes back to it. */
const leftUnsaved = new Map<string, string>();

/**
 * What is being typed, given on when the typing rests or the box is left. While a draft is open the box shows it and
 * not the stored value, so a late write never pulls letters from under the fingers. `onSettle` says whether the text
 * could be taken.
 *
 * `stored` may also change from elsewhere, by another tab or a restore: a box that is not being typed in shows the newer
 * value; one that is keeps its text, and `elsewhere` says what stands there now.
 */
export function useDraft(box: string, stored: string, onSettle: (text: string) => boolean) {
  const [draft, setDraft] = useState<string | null>(leftUnsaved.get(box) ?? null);
  const [elsewhere, setElsewhere] = useState<string | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const latest = useRef({ draft, onSettle });
  latest.current = { draft, onSettle };
  const known = useRef({ stored, isTyping: false, isGiving: false });

  function settle() {
    clearTimeout(timer.current);
    known.current.isTyping = false;
    const { draft: text, onSettle: give } = latest.current;
    if (text === null) return;
    known.current.isGiving = true;
    if (give(text)) leftUnsaved.delete(box);
    else leftUnsaved.set(box, text);
    // What was given comes back as `stored` with the next drawing, which is done before any timer.
    setTimeout(() => {
      known.current.isGiving = false;
    });
  }
  useEffect(() => settle, []);
  useEffect(() => {
    const { stored: before, isTyping, isGiving } = known.current;
    known.current.stored = stored;
    const text = latest.current.draft;
    if (stored === before || isGiving || text === null || stored === text) return;
    if (isTyping || leftUnsaved.has(box)) setElsewhere(stored);
    else setDraft(null);
  }, [stored]);

  return {
    text: draft ?? stored,
    elsewhere,
    onInput(text: string) {
      setDraft(text);
      latest.current = { ...latest.current, draft: text };
      known.current.isTyping = true;
      clearTimeout(timer.current);
      timer.current = setTimeout(settle, SETTLE_MS);
    },
    /** Leaving the box: give the draft on and, if `keep` is false, show the stored value again. */
    onLeave(keep: boolean) {
      settle();
      if (keep) return;
      setDraft(null);
      setElsewhere(null);
    },
  };
}
