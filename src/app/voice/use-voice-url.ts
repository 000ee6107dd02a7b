import { useEffect, useState } from 'preact/hooks';
import { store } from '../state/store.ts';
import { unsavedBytes } from '../state/unsaved-sessions.ts';

/** A URL for the sound of a voice note while it is shown; `loading` until then, `absent` where it is not on this phone. */
export function useVoiceUrl(sha256: string): 'loading' | 'absent' | string {
  const [url, setUrl] = useState<string>('loading');
  useEffect(() => {
    let made: string | null = null;
    let left = false;
    async function load() {
      const content = unsavedBytes(sha256, 'voices') ?? (await store().voice(sha256));
      if (left) return;
      if (!content) return setUrl('absent');
      made = URL.createObjectURL(new Blob([content.bytes], { type: content.type }));
      setUrl(made);
    }
    void load();
    return () => {
      left = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [sha256]);
  return url;
}
