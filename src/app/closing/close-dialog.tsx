import { useState } from 'preact/hooks';
import { nextRevision } from '../../record/fold-closings.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { words, writeProblems } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { closeSheet } from './close-sheet.ts';
import { stillOpen } from './still-open.ts';

/** What closing means, what is still open, and the closing itself. */
export function CloseDialog({ session, onClose }: { session: PackSession; onClose: () => void }) {
  const say = closingWords.dialog;
  const [working, setWorking] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const record = session.record.value;
  const { sheet } = record;
  const open = stillOpen(session);

  async function close() {
    setWorking(true);
    setWrong(null);
    try {
      const problem = await closeSheet(session, Date.now());
      if (problem === null) return onClose();
      setWrong(`${say.notClosed} ${writeProblems[problem]}`);
    } catch (error) {
      console.error('sheet: not sealed', error);
      setWrong(say.unreadable);
    }
    setWorking(false);
  }

  return (
    <Dialog title={say.title(nextRevision(record))} onClose={() => !working && onClose()}>
      <p>{say.lead}</p>
      {sheet.now === 'revising' && <p>{say.reason(sheet.reason)}</p>}
      {open.length === 0 ? (
        <p class="small muted">{say.nothingOpen}</p>
      ) : (
        <div class="small">
          <p>{say.stillOpen}</p>
          <ul class="still-open">
            {open.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      {wrong && (
        <p class="notice" role="alert">
          {wrong}
        </p>
      )}
      <div class="row">
        <button type="button" class="button quiet" disabled={working} onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" disabled={working} onClick={() => void close()}>
          {working ? say.working : say.now}
        </button>
      </div>
    </Dialog>
  );
}
