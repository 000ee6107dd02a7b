import { useState } from 'preact/hooks';
import type { Remedy } from '../../schema/checklist.ts';
import { type RemedyNote, remedyNoteSchema } from '../../schema/remedy-note.ts';
import { localDay } from '../../text/format-day.ts';
import { remedyWords, workTime } from '../../text/remedies.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { DayField } from '../../ui/fields/day-field.tsx';
import { NumberField } from '../../ui/fields/number-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { limitProblem } from '../parts/limit-problem.ts';
import { notNegative } from '../parts/shown-number.ts';
import type { PackSession } from '../state/pack-session.ts';

const say = remedyWords.dialog;

interface RemedyDialogProps {
  session: PackSession;
  remedy: Remedy;
  number: number;
  onClose: () => void;
}

/** What one remedy takes for this pack: typed whole, saved at once. What is left empty stays unknown. */
export function RemedyDialog({ session, remedy, number, onClose }: RemedyDialogProps) {
  const { nameplate, remedyNotes } = session.record.value;
  const stored = remedyNotes[remedy.id];
  const currency = nameplate.currency;
  const [price, setPrice] = useState<number | null>(stored?.price ?? null);
  const [pricedOn, setPricedOn] = useState(
    stored ? (stored.pricedOn ?? '') : localDay(nowMs.peek(), utcOffsetMinutes(nowMs.peek())),
  );
  const [parts, setParts] = useState(stored?.parts ?? '');
  const [timeMin, setTimeMin] = useState<number | null>(stored?.timeMin ?? null);
  const [note, setNote] = useState(stored?.note ?? '');
  const owner = `${session.packId}/remedy/${remedy.id}`;
  const isEmpty = price === null && parts === '' && timeMin === null && note === '';

  function save() {
    const v: RemedyNote = {
      // Fields of a later version stay with it.
      ...withoutOurs(stored),
      ...(price !== null && { price, ...(currency !== undefined && { currency }) }),
      ...(price !== null && pricedOn !== '' && { pricedOn }),
      ...(parts !== '' && { parts }),
      ...(timeMin !== null && { timeMin }),
      ...(note !== '' && { note }),
    };
    const base = { subject: 'remedyNote', part: remedy.id } as const;
    if (!isEmpty || stored !== undefined) {
      void session.put({
        puts: [isEmpty ? { ...base, gone: true } : { ...base, v }],
        undoLabel: isEmpty ? say.undoClear(number) : say.undoLabel(number),
      });
    }
    onClose();
  }

  return (
    <Dialog title={say.title(number)} onClose={onClose}>
      <p>{remedy.text}</p>
      <p class="small muted">
        {say.priceHint} {currency === undefined && say.noCurrency}
      </p>
      <div class="pair">
        <NumberField
          id="remedy-price"
          owner={owner}
          label={say.price}
          unit={currency ?? ''}
          value={price}
          onChange={setPrice}
          check={(value) =>
            notNegative(value) ?? limitProblem(remedyNoteSchema.entries.price, value, { unit: currency ?? '' })
          }
        />
        <DayField id="remedy-on" label={say.pricedOn} value={pricedOn} onChange={setPricedOn} />
        <NumberField
          id="remedy-time"
          owner={owner}
          label={remedy.timeMin === undefined ? say.time : `${say.time} (${workTime(remedy.timeMin)})`}
          unit="min"
          value={timeMin}
          onChange={setTimeMin}
          check={(value) =>
            notNegative(value) ?? limitProblem(remedyNoteSchema.entries.timeMin, value, { unit: 'min' })
          }
        />
      </div>
      <TextField
        id="remedy-parts"
        label={say.parts}
        value={parts}
        onChange={setParts}
        {...(remedy.parts !== undefined && { placeholder: remedy.parts })}
      />
      <TextField id="remedy-note" label={say.note} value={note} onChange={setNote} lines="many" maxLength={2000} />
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" onClick={save}>
          {say.save}
        </button>
      </div>
    </Dialog>
  );
}

function withoutOurs(stored: RemedyNote | undefined): Partial<RemedyNote> {
  const ours = Object.keys(remedyNoteSchema.entries);
  return Object.fromEntries(Object.entries(stored ?? {}).filter(([field]) => !ours.includes(field)));
}
