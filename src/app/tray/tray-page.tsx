import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';

export function TrayPage() {
  return (
    <Screen title="Tray" back={{ href: '#/', label: words.bench }}>
      {null}
    </Screen>
  );
}
