import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import type { PackSession } from '../state/pack-session.ts';

export function OwnerPage({ session }: { session: PackSession }) {
  return (
    <Screen title="Before you use this pack" back={backToPack(session.record.value)}>
      {null}
    </Screen>
  );
}
