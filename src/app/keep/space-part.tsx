import { useEffect, useState } from 'preact/hooks';
import { spaceUsed } from '../../storage/space.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { keepWords as say } from '../../text/keep.ts';
import { askPersistence, keeping } from '../state/keeping.ts';

/** Above this share of what the phone allows it is said to be nearly full. Our choice. */
const NEARLY_FULL_FRAC = 0.85;

/** Space used, and whether the phone promises to keep it. */
export function SpacePart() {
  const [space, setSpace] = useState<Awaited<ReturnType<typeof spaceUsed>>>(null);
  useEffect(() => {
    void spaceUsed().then(setSpace);
  }, []);
  const full = space !== null && space.usedBytes > NEARLY_FULL_FRAC * space.quotaBytes;
  return (
    <section class="stack">
      <h2>{say.space}</h2>
      <p>{space ? say.used(formatBytes(space.usedBytes), formatBytes(space.quotaBytes)) : say.usedUnknown}</p>
      {full && <p class="notice">{say.nearlyFull}</p>}
      <p class="muted">{keeping.value === 'persisted' ? say.persisted : say.notPersisted}</p>
      {keeping.value === 'refused' && <p class="small">{say.refused}</p>}
      {keeping.value !== 'persisted' && (
        <button type="button" class="button" onClick={() => void askPersistence()}>
          {say.ask}
        </button>
      )}
    </section>
  );
}
