import { useState } from 'preact/hooks';
import type { PackRecord } from '../../record/pack-record.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { formatDay } from '../../text/format-day.ts';
import { sheetClosingWords } from '../../text/sheet-closing.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { AttachDialog, type AttachmentKind } from './attach-dialog.tsx';

/** What was attached to the closed sheet, and the ways to attach more. */
export function AttachmentsPart({ session, to }: { session: PackSession; to: string }) {
  const say = closingWords.attach;
  const [attaching, setAttaching] = useState<AttachmentKind | null>(null);
  /** What was typed and not attached: there again when its dialog is. */
  const [drafts, setDrafts] = useState({ makerReply: '', correction: '' });
  const { attachments, closings } = session.record.value;
  return (
    <section class="stack">
      <h2>{say.part}</h2>
      {attachments.length === 0 && <p class="small muted">{say.lead}</p>}
      {attachments.map((attachment) => (
        <Attached
          key={attachment.id}
          session={session}
          attachment={attachment}
          revision={closings.find(({ sha256 }) => sha256 === attachment.to)?.revision}
        />
      ))}
      {(['makerReply', 'correction'] as const).map((kind) => (
        <button key={kind} type="button" class="button" onClick={() => setAttaching(kind)}>
          {say[kind]}
        </button>
      ))}
      {attaching && (
        <AttachDialog
          session={session}
          to={to}
          kind={attaching}
          text={drafts[attaching]}
          onText={(text) => setDrafts({ ...drafts, [attaching]: text })}
          onClose={() => setAttaching(null)}
        />
      )}
    </section>
  );
}

interface AttachedProps {
  session: PackSession;
  attachment: PackRecord['attachments'][number];
  revision: number | undefined;
}

function Attached({ session, attachment, revision }: AttachedProps) {
  const say = closingWords.attach;
  const [asking, setAsking] = useState(false);
  const { id, kind, text, from, on } = attachment;
  function takeAway() {
    setAsking(false);
    void session.put({ puts: [{ subject: 'attachment', part: id, gone: true }] });
  }
  return (
    <div class="card stack">
      <p class="small muted">{sheetClosingWords.attached.label({ kind, from, revision, on: on && formatDay(on) })}</p>
      <p class="attached-words">{text}</p>
      <button type="button" class="button quiet" onClick={() => setAsking(true)}>
        {say.takeAway}
      </button>
      {asking && (
        <Dialog title={say.takeAway} onClose={() => setAsking(false)}>
          <p>{say.takeAwayAsk}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setAsking(false)}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={takeAway}>
              {say.takeAway}
            </button>
          </div>
        </Dialog>
      )}
    </div>
  );
}
