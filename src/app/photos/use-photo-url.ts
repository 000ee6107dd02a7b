import { useEffect, useState } from 'preact/hooks';
import { store } from '../state/store.ts';
import { unsavedBytes } from '../state/unsaved-sessions.ts';

/** A URL for the bytes of a photo, stored or still waiting to be, while the component is shown; null while they load or if they are not here. */
export function usePhotoUrl(photoId: string | null, shelf: 'photos' | 'thumbs'): string | null {
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let left = false;
    async function load(id: string) {
      const content =
        unsavedBytes(id, shelf) ??
        (await store().photo(id, shelf)) ??
        (shelf === 'thumbs' ? await store().photo(id) : null);
      if (left || !content) return;
      made = URL.createObjectURL(new Blob([content.bytes], { type: content.type }));
      setUrl(made);
    }
    if (photoId !== null) void load(photoId);
    return () => {
      left = true;
      setUrl(null);
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [photoId, shelf]);
  return url;
}
