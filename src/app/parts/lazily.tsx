import { type ComponentType, createElement } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * A screen whose code is fetched when it is first shown (from the phone itself once installed). Blank meanwhile: it is a
 * matter of milliseconds, and words that flash by would only be noise.
 */
export function lazily<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  let loaded: ComponentType<P> | null = null;
  return function Lazily(props: P) {
    const [screen, setScreen] = useState<{ Loaded: ComponentType<P> } | null>(loaded && { Loaded: loaded });
    useEffect(() => {
      if (screen) return;
      let left = false;
      void load().then((Loaded) => {
        loaded = Loaded;
        if (!left) setScreen({ Loaded });
      });
      return () => {
        left = true;
      };
    }, [screen]);
    return screen ? createElement(screen.Loaded, props) : <div class="screen" />;
  };
}
