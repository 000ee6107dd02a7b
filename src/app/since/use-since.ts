import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Since } from '../../sheet/model/since-blocks.ts';
import type { PackSession } from '../state/pack-session.ts';
import { type Earlier, readEarlier, sinceOf } from './earlier-pack.ts';

/**
 * What changed since the pack that this one was begun from. Null where it was begun from none; `reading` until both
 * records are here.
 */
export function useSince(session: PackSession): Since | 'reading' | null {
  const record = session.record.value;
  const grading = session.grading.value;
  const { retestOf } = record;
  const earlierId = retestOf?.packId ?? null;
  const [read, setRead] = useState<{ packId: string; earlier: Earlier } | null>(null);
  useEffect(() => {
    if (retestOf === null || read?.packId === earlierId) return;
    let left = false;
    readEarlier(retestOf).then(
      (earlier) => {
        if (!left) setRead({ packId: retestOf.packId, earlier });
      },
      (error) => console.error('since: the earlier pack was not read', error),
    );
    return () => {
      left = true;
    };
  }, [earlierId, read]);
  return useMemo(() => {
    if (retestOf === null) return null;
    if (read === null || read.packId !== earlierId) return 'reading';
    return sinceOf(retestOf, read.earlier, { definition: session.definition.definition, grading, record });
  }, [record, grading, read, earlierId, session]);
}
