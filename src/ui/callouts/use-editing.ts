import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { beginEditing, type Edit, type EditedCallout, putCallout, redo, removeCallout, undo } from './editing.ts';

interface UseEditingProps {
  callouts: readonly EditedCallout[];
  onPut: (callout: EditedCallout) => void;
  onRemove: (id: string) => void;
}

/** The callouts of one visit, with undo and redo; every change is given out to be stored. */
export function useEditing({ callouts: stored, onPut, onRemove }: UseEditingProps) {
  const editing = useSignal(beginEditing(stored.map(withoutNumber)));
  // A new callout learns its `made` once it is stored, and must keep it: it orders the numbers.
  const made = useRef(new Map<string, string>());
  useEffect(() => {
    for (const callout of stored) if (callout.made) made.current.set(callout.id, callout.made);
  }, [stored]);

  function take(edit: Edit | null) {
    if (edit === null) return;
    editing.value = edit.editing;
    if (edit.write.kind === 'remove') onRemove(edit.write.id);
    else onPut(withMade(edit.write.callout, made.current.get(edit.write.callout.id)));
  }

  return {
    callouts: editing.value.callouts,
    canUndo: editing.value.past.length > 0,
    canRedo: editing.value.future.length > 0,
    put: (callout: EditedCallout) => take(putCallout(editing.peek(), callout)),
    /** Does nothing where the callout is gone or already so: words may settle after it was removed. */
    change(id: string, change: Partial<EditedCallout>, joins: string | null = null) {
      const now = editing.peek().callouts.find((callout) => callout.id === id);
      if (now !== undefined) take(putCallout(editing.peek(), { ...now, ...change }, joins));
    },
    remove: (id: string) => take(removeCallout(editing.peek(), id)),
    undo: () => take(undo(editing.peek())),
    redo: () => take(redo(editing.peek())),
  };
}

/** The number follows from the order and is never stored. */
function withoutNumber(callout: EditedCallout & { number?: unknown }): EditedCallout {
  const { number: _, ...rest } = callout;
  return rest;
}

/** Fields without a value are left out, so that what is stored has none of them. */
function withMade(callout: EditedCallout, made: string | undefined): EditedCallout {
  const whole = { ...callout, made: callout.made ?? made };
  return Object.fromEntries(
    Object.entries(whole).filter(([, value]) => value !== undefined),
  ) as unknown as EditedCallout;
}
