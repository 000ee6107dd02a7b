import { useState } from 'preact/hooks';
import type { RetestOf } from '../../schema/closing.ts';
import { retestWords as say } from '../../text/retest.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { goTo, hrefTo } from '../route.ts';
import { cards } from '../state/bench.ts';
import type { PackSession } from '../state/pack-session.ts';
import { nextSample } from './next-sample.ts';

/** "Test it again": another sample of the product, or a new revision of it, begun from this pack's nameplate. */
export function RetestPart({ session }: { session: PackSession }) {
  const [asking, setAsking] = useState(false);
  return (
    <>
      <button type="button" class="button quiet" onClick={() => setAsking(true)}>
        {say.button}
      </button>
      {asking && <RetestDialog session={session} onClose={() => setAsking(false)} />}
    </>
  );
}

function RetestDialog({ session, onClose }: { session: PackSession; onClose: () => void }) {
  const [kind, setKind] = useState<RetestOf['kind']>('sample');
  const [now, setNow] = useState<'asking' | 'beginning' | 'notBegun'>('asking');
  const record = session.record.value;
  const { name = '' } = record.nameplate;
  const sample = nextSample(name, [...cards.value, { name, sample: record.nameplate.sample ?? '' }]);

  async function begin() {
    setNow('beginning');
    try {
      const { beginRetest } = await import('./begin-retest.ts');
      const packId = await beginRetest(record, session.definition, { kind, sample });
      if (packId === null) setNow('notBegun');
      else goTo(hrefTo(packId, 'nameplate'));
    } catch (error) {
      console.error('retest: not begun', error);
      setNow('notBegun');
    }
  }

  return (
    <Dialog title={say.title} onClose={onClose}>
      <p>{say.lead}</p>
      <ChoiceField
        label={say.kind}
        choices={(['sample', 'productRevision'] as const).map((id) => ({ id, text: say.kinds[id].title }))}
        chosen={kind}
        onChoose={setKind}
      />
      <p class="small muted">{say.kinds[kind].hint}</p>
      <p class="small muted">{say.becomes(words.packLabel(name, sample))}</p>
      {now === 'notBegun' && (
        <p class="notice" role="alert">
          {say.notBegun}
        </p>
      )}
      <div class="row">
        <button type="button" class="button" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" disabled={now === 'beginning'} onClick={() => void begin()}>
          {say.begin}
        </button>
      </div>
    </Dialog>
  );
}
