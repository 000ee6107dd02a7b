import { useEffect, useRef, useState } from 'preact/hooks';
import { checklistsWords as say } from '../../text/checklists.ts';
import { FileButton } from './file-button.tsx';
import type { Loaded } from './load-checklist.ts';

type Now = { now: 'rest' } | { now: 'reading'; name: string } | { now: 'done'; loaded: Loaded };

/** A checklist from a file: what is wrong in it is listed with its place, and then nothing has changed. */
export function LoadChecklistPart({ onLoaded }: { onLoaded: () => void }) {
  const outcome = useRef<HTMLDivElement>(null);
  const [now, setNow] = useState<Now>({ now: 'rest' });
  // What became of it stands below the button, so that nothing under the finger moves; it is brought into sight.
  useEffect(() => outcome.current?.scrollIntoView({ block: 'nearest' }), [now]);

  async function load(file: File) {
    setNow({ now: 'reading', name: file.name });
    const loaded = await loadedOf(file);
    setNow({ now: 'done', loaded });
    if (loaded.isOnBoard) onLoaded();
  }
  return (
    <>
      <p class="small muted">{say.loadLead}</p>
      <FileButton
        label={say.load}
        accept=".json,application/json"
        isBusy={now.now === 'reading'}
        onFile={(file) => void load(file)}
      />
      {now.now === 'reading' && <p role="status">{say.reading(now.name)}</p>}
      {now.now === 'done' && (
        <div ref={outcome} class={now.loaded.isOnBoard ? 'notice calm stack' : 'notice stack'} role="status">
          <p>{now.loaded.sentence}</p>
          {now.loaded.note !== null && <p class="small">{now.loaded.note}</p>}
          {now.loaded.lines.length > 0 && (
            <ul class="stack small" data-problems>
              {now.loaded.lines.map(({ place, reason }, at) => (
                <li key={at} class="hash">
                  <strong>{place}</strong> {reason}
                </li>
              ))}
            </ul>
          )}
          {now.loaded.more > 0 && <p class="small">{say.more(now.loaded.more)}</p>}
        </div>
      )}
    </>
  );
}

async function loadedOf(file: File): Promise<Loaded> {
  try {
    const { loadChecklist } = await import('./load-checklist.ts');
    return await loadChecklist(file);
  } catch (error) {
    console.warn('checklist: not loaded', error);
    const sentence = say.refused(file.name, say.reasons.unreadable);
    return { sentence, note: null, lines: [], more: 0, isOnBoard: false };
  }
}
