import { useEffect, useState } from 'preact/hooks';
import { keepOnPhone, keptOnPhone } from './kept.ts';

/**
 * A form that is not yet an entry, kept on the phone so that a dropped page costs nothing. Setting it to null takes it
 * away. Until it has been read the empty form is shown.
 */
export function useKeptDraft<T>(name: string, empty: T): [T, (draft: T | null) => void] {
  const [draft, setDraft] = useState(empty);
  useEffect(() => {
    let left = false;
    void keptOnPhone<T>(name).then((found) => {
      if (found !== null && !left) setDraft(found);
    });
    return () => {
      left = true;
    };
  }, [name]);
  return [
    draft,
    (next) => {
      setDraft(next ?? empty);
      void keepOnPhone(name, next);
    },
  ];
}
