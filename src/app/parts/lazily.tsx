import { type ComponentType, createElement } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';

/**
 * A screen whose code is fetched when it is first shown (from the phone itself once installed). Blank meanwhile: it is a
 * matter of milliseconds, and words that flash by would only be noise. Where it cannot be fetched, that is said.
 */
export function lazily<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  let loaded: ComponentType<P> | null = null;
  return function Lazily(props: P) {
    const [screen, setScreen] = useState<{ Loaded: ComponentType<P> } | null>(loaded && { Loaded: loaded });
    const [attempt, setAttempt] = useState(1);
    const [failed, setFailed] = useState(0);
    useEffect(() => {
      if (screen) return;
      let left = false;
      load().then(
        (Loaded) => {
          loaded = Loaded;
          if (!left) setScreen({ Loaded });
        },
        (error: unknown) => {
          console.warn('screen: not fetched', error);
          if (!left) setFailed(attempt);
        },
      );
      return () => {
        left = true;
      };
    }, [screen, attempt]);
    if (screen) return createElement(screen.Loaded, props);
    return failed === attempt ? <NotFetched again={() => setAttempt(attempt + 1)} /> : <div class="screen" />;
  };
}

function NotFetched({ again }: { again: () => void }) {
  return (
    <Screen title={words.notFetched} back={{ href: '#/', label: words.bench }}>
      <p>{words.notFetchedHint}</p>
      <button type="button" class="button primary" onClick={again}>
        {words.tryAgain}
      </button>
    </Screen>
  );
}
