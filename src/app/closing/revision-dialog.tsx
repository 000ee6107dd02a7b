import { useState } from 'preact/hooks';
import { nextRevision } from '../../record/fold-closings.ts';
import { MAX_NOTE } from '../../schema/text-limits.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { Dialog } from '../../ui/dialog.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { unsavedLines } from '../unsaved-lines.ts';

/** Asks why a closed sheet is to be changed. What was held back is written with the reason, or dropped. */
export function RevisionDialog({ session }: { session: PackSession }) {
  const say = closingWords.why;
  const next = nextRevision(session.record.value);
  const lines = session.heldBack.value.flatMap((change) =>
    change === 'undo' ? [say.undo(session.undoLabel.value ?? '')] : unsavedLines([change]),
  );
  const holdsPhoto = session.heldBack.value.some((change) => change !== 'undo' && change.photos !== undefined);
  return (
    <ReasonForRevision
      revision={next}
      lead={say.what(lines)}
      onReason={(reason) => void session.decide(reason)}
      onDrop={() => void session.decide(null)}
      dropAsk={holdsPhoto ? say.dropPhoto : null}
    />
  );
}

interface ReasonForRevisionProps {
  revision: number;
  /** What is waiting for it. */
  lead: string;
  /** The reason to begin with. */
  offered?: string;
  onReason: (reason: string) => void;
  onDrop: () => void;
  /** Asked before what cannot be had again is dropped. */
  dropAsk?: string | null;
}

export function ReasonForRevision(props: ReasonForRevisionProps) {
  const { revision, lead, offered = '', onReason, onDrop, dropAsk = null } = props;
  const say = closingWords.why;
  const [reason, setReason] = useState(offered);
  const [dropping, setDropping] = useState(false);
  const cancel = () => (dropAsk === null ? onDrop() : setDropping(true));
  if (dropping) {
    return (
      <Dialog key="drop" title={say.dropTitle} onClose={() => setDropping(false)}>
        <p>{dropAsk}</p>
        <div class="row">
          <button type="button" class="button" onClick={onDrop}>
            {say.dropNow}
          </button>
          <button type="button" class="button primary" onClick={() => setDropping(false)}>
            {say.dropNot}
          </button>
        </div>
      </Dialog>
    );
  }
  return (
    <Dialog key="ask" title={say.title} onClose={cancel}>
      <p>
        <strong>{say.ask(revision)}</strong>
      </p>
      {lead !== '' && <p class="small muted held-back">{lead}</p>}
      <div class="field">
        <label for="revision-reason">{say.reason}</label>
        <div class="box">
          <textarea
            id="revision-reason"
            rows={3}
            maxLength={MAX_NOTE}
            value={reason}
            onInput={(event) => setReason(event.currentTarget.value)}
          />
        </div>
      </div>
      <div class="row">
        <button type="button" class="button quiet" onClick={cancel}>
          {say.drop}
        </button>
        <button
          type="button"
          class="button primary"
          disabled={reason.trim() === ''}
          onClick={() => onReason(reason.trim())}
        >
          {say.make(revision)}
        </button>
      </div>
    </Dialog>
  );
}
