import type { RecordSecondReader } from '../../record/pack-record.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { Screen } from '../../ui/screen.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { finishReading } from './finish-reading.ts';
import { OwnSavedLine } from './own-saved-line.tsx';

interface FinishPageProps {
  session: PackSession;
  reader: RecordSecondReader;
  number: number;
}

/** Nothing is left to answer. */
export function FinishPage({ session, reader, number }: FinishPageProps) {
  return (
    <Screen
      title={say.finishTitle}
      back={{ href: hrefTo(session.packId, 'second-reader'), label: say.leave }}
      dockClass="two-rows"
      dock={
        <>
          <OwnSavedLine session={session} />
          <button type="button" class="button primary" onClick={() => void finishReading(session, reader)}>
            {say.finish(0)}
          </button>
        </>
      }
    >
      <p>{say.nameOf(number, reader.label)}</p>
      <p class="muted">{say.finishLead}</p>
    </Screen>
  );
}
