import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import type { PackSession } from '../state/pack-session.ts';

export function CardPage({ session }: { session: PackSession }) {
  return (
    <Screen title="Picture card" back={backToPack(session.record.value)}>
      {null}
    </Screen>
  );
}
