import { useState } from 'preact/hooks';
import { randomId } from '../../storage/open-store.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** What the second reader says of themselves before the first photo. */
export function BeginDialog({ session, onClose }: { session: PackSession; onClose: () => void }) {
  const [label, setLabel] = useState('');
  const [blind, setBlind] = useState(false);
  const number = session.record.value.secondReaders.length + 1;

  async function begin() {
    const readerId = randomId();
    const v = { ...(label !== '' && { label }), blind, made: null };
    const saved = await session.put({
      puts: [{ subject: 'secondReader', part: readerId, v }],
      undoLabel: say.undo.begun(say.nameOf(number, label)),
    });
    onClose();
    if (saved) goTo(hrefTo(session.packId, 'second-reader', readerId));
  }
  return (
    <Dialog title={say.beginTitle} onClose={onClose}>
      <p>{say.handOver}</p>
      <TextField id="second-reader-label" label={say.label} value={label} onChange={setLabel} />
      <label class="tick">
        <input type="checkbox" checked={blind} onChange={(event) => setBlind(event.currentTarget.checked)} />
        <span>{say.blind}</span>
      </label>
      <p class="small muted">{say.notBlind}</p>
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" onClick={() => void begin()}>
          {say.beginNow}
        </button>
      </div>
    </Dialog>
  );
}
