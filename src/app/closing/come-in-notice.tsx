import { useState } from 'preact/hooks';
import { nextRevision } from '../../record/fold-closings.ts';
import { closingWords as say } from '../../text/closing-screens.ts';
import { reopeningPuts } from '../state/closed-guard.ts';
import type { PackSession } from '../state/pack-session.ts';
import type { ComeIn } from './come-in.ts';
import { ReasonForRevision } from './revision-dialog.tsx';

/** Entries that got into a closed record past its sheet, with the way to make the revision that has them. */
export function ComeInNotice({ session, comeIn }: { session: PackSession; comeIn: ComeIn }) {
  const [asking, setAsking] = useState(false);
  const record = session.record.value;
  const next = nextRevision(record);
  function open(reason: string) {
    setAsking(false);
    void session.put({ puts: reopeningPuts(record, reason, Date.now()) });
  }
  return (
    <section class="notice stack" role="status">
      <p>{say.comeIn(comeIn.count)}</p>
      <button type="button" class="button" onClick={() => setAsking(true)}>
        {say.why.make(next)}
      </button>
      {asking && (
        <ReasonForRevision
          revision={next}
          lead={say.comeIn(comeIn.count)}
          offered={say.comeInReason}
          onReason={open}
          onDrop={() => setAsking(false)}
        />
      )}
    </section>
  );
}
