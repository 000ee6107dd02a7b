import type { Callout } from '../schema/callout.ts';
import type { Entry } from '../schema/entry.ts';
import type { Photo } from '../schema/photo.ts';
import type { RecordCallout, RecordPhoto } from './pack-record.ts';

/**
 * Photos in the order in which they were made, each with its items and callouts. Takes live, checked entries.
 * Links and callouts of a photo that is not there wait for it: a photo brought back finds them again.
 */
export function foldPhotos(live: readonly Entry[]): RecordPhoto[] {
  const itemIds = new Map<string, string[]>();
  const callouts = new Map<string, (Callout & { id: string })[]>();
  for (const { key, v } of live) {
    const [, subject, part] = key;
    if (subject === 'photoItem') {
      const [photoId = '', itemId = ''] = part.split('/');
      itemIds.set(photoId, [...(itemIds.get(photoId) ?? []), itemId]);
    } else if (subject === 'callout') {
      const callout = { ...(v as Callout), id: part };
      callouts.set(callout.photoId, [...(callouts.get(callout.photoId) ?? []), callout]);
    }
  }
  return live
    .filter(({ key }) => key[1] === 'photo')
    .map(({ key, v }) => {
      const id = key[2];
      return {
        ...(v as Photo),
        id,
        itemIds: (itemIds.get(id) ?? []).sort(),
        callouts: numbered(callouts.get(id) ?? []),
      };
    })
    .sort(byMade);
}

/** Leaders are numbered 1, 2, 3 … in the order in which they were made; other kinds carry no number. */
function numbered(callouts: (Callout & { id: string })[]): RecordCallout[] {
  let leaders = 0;
  return callouts.sort(byMade).map((callout) => {
    if (callout.kind === 'leader') leaders += 1;
    return { ...callout, number: callout.kind === 'leader' ? leaders : null };
  });
}

function byMade(a: { made: string; id: string }, b: { made: string; id: string }): number {
  const [left, right] = [a.made + a.id, b.made + b.id];
  return left < right ? -1 : left > right ? 1 : 0;
}
