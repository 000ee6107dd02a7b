import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';

export function SideBySidePage() {
  return (
    <Screen title="Side by side" back={{ href: '#/', label: words.bench }}>
      {null}
    </Screen>
  );
}
