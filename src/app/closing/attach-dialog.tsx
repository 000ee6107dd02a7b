import { useState } from 'preact/hooks';
import type { ATTACHMENT_KINDS } from '../../schema/closing.ts';
import { MAX_NOTE } from '../../schema/text-limits.ts';
import { randomId } from '../../storage/open-store.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { localDay } from '../../text/format-day.ts';
import { words, writeProblems } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { DayField } from '../../ui/fields/day-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import type { PackSession } from '../state/pack-session.ts';

export type AttachmentKind = (typeof ATTACHMENT_KINDS)[number];

interface AttachDialogProps {
  session: PackSession;
  /** The closing (its SHA-256) that it speaks of. */
  to: string;
  kind: AttachmentKind;
  text: string;
  onText: (text: string) => void;
  onClose: () => void;
}

/** A maker's reply or a correction for the closed sheet. What could not be saved stays here, to be tried again. */
export function AttachDialog({ session, to, kind, text, onText, onClose }: AttachDialogProps) {
  const say = closingWords.attach;
  const [from, setFrom] = useState('');
  const [on, setOn] = useState(localDay(nowMs.peek(), utcOffsetMinutes(nowMs.peek())));
  const [wrong, setWrong] = useState<string | null>(null);

  async function attach() {
    const v = {
      kind,
      text: text.trim(),
      ...(from !== '' && { from }),
      ...(on !== '' && { on }),
      to,
      made: null,
    };
    const problem = await session.putNowOrNever({ puts: [{ subject: 'attachment', part: randomId(), v }] });
    if (problem !== null) return setWrong(writeProblems[problem]);
    onText('');
    onClose();
  }
  return (
    <Dialog title={say[kind]} onClose={onClose}>
      <div class="field">
        <label for="attachment-text">{say.text[kind]}</label>
        <div class="box">
          <textarea
            id="attachment-text"
            rows={5}
            maxLength={MAX_NOTE}
            value={text}
            onInput={(event) => onText(event.currentTarget.value)}
          />
        </div>
      </div>
      <TextField id="attachment-from" label={say.from[kind]} value={from} onChange={setFrom} />
      <DayField id="attachment-on" label={say.on[kind]} value={on} onChange={setOn} />
      {wrong && (
        <p class="notice" role="alert">
          {wrong}
        </p>
      )}
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" disabled={text.trim() === ''} onClick={() => void attach()}>
          {say.now}
        </button>
      </div>
    </Dialog>
  );
}
