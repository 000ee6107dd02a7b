import { useState } from 'preact/hooks';
import type { Instrument } from '../../schema/live-tests/instrument.ts';
import type { Named } from '../../schema/live-tests/live-tests.ts';
import { MAX_LINE } from '../../schema/text-limits.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';
import { editingWords as say } from '../../text/live-tests/editing.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';

const ANOTHER = 'another';

/** With what a test was measured: one of this pack's instruments, or a new one, named here and now. */
export function InstrumentPicker({
  instruments,
  chosen,
  onChoose,
}: {
  instruments: readonly Named<Instrument>[];
  chosen: string | null;
  /** A new instrument comes as an entry to be written together with the choice. */
  onChoose: (id: string | null, also?: readonly Put[]) => void;
}) {
  const [naming, setNaming] = useState(false);
  const [name, setName] = useState('');

  function keep() {
    setNaming(false);
    const text = name.trim();
    if (text === '') return;
    const id = randomId();
    setName('');
    onChoose(id, [{ subject: 'instrument', part: id, v: { name: text, made: null } }]);
  }
  return (
    <>
      <ChoiceField
        label={say.standard.instrumentId}
        choices={[...instruments.map(({ id, name: text }) => ({ id, text })), { id: ANOTHER, text: say.addInstrument }]}
        chosen={chosen}
        onChoose={(id) => (id === ANOTHER ? setNaming(true) : onChoose(id))}
        onClear={() => onChoose(null)}
      />
      {naming && (
        <Dialog title={say.instrumentTitle} onClose={() => setNaming(false)}>
          <div class="field">
            <label for="instrument-name">{say.instrumentName}</label>
            <div class="box">
              <input
                id="instrument-name"
                type="text"
                autocomplete="off"
                maxLength={MAX_LINE}
                value={name}
                onInput={(event) => setName(event.currentTarget.value)}
              />
            </div>
          </div>
          <p class="small muted">{say.accuracyHint}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setNaming(false)}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={keep}>
              {say.keepInstrument}
            </button>
          </div>
        </Dialog>
      )}
    </>
  );
}
