import { packWords } from '../../text/bench.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';

/** There is nothing at this address; why, and the way back. */
export function Lost({ title, hint }: { title: string; hint: string }) {
  return (
    <Screen title={title} back={{ href: '#/', label: words.bench }}>
      <p>{hint}</p>
      <a class="button primary" href="#/">
        {packWords.toBench}
      </a>
    </Screen>
  );
}
