import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import type { PackSession } from '../state/pack-session.ts';

export function LetterPage({ session }: { session: PackSession }) {
  return (
    <Screen title="Letter to the maker" back={backToPack(session.record.value)}>
      {null}
    </Screen>
  );
}
