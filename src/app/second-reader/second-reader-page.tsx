import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import type { PackSession } from '../state/pack-session.ts';

export function SecondReaderPage({ session, id: _id }: { session: PackSession; id: string }) {
  return (
    <Screen title="Second reader" back={backToPack(session.record.value)}>
      {null}
    </Screen>
  );
}
