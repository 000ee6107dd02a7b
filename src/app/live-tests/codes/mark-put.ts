import type { FoundCode } from '../../../photos/read-codes.ts';
import type { CellMark } from '../../../schema/live-tests/cell-mark.ts';
import { randomId } from '../../../storage/open-store.ts';
import type { Put } from '../../../storage/store.ts';
import { isProvisional } from '../../state/provisional.ts';

type StoredMark = CellMark & { id: string };

/**
 * The entry of a code with one field changed; an empty value takes the field away. A code that was mended by hand is not
 * what the reader saw, so it is a typed one from then on.
 */
export function markPut(
  id: string,
  before: StoredMark | undefined,
  change: { key: 'text' | 'cellNumber' | 'note'; value: string | number | null },
): Put {
  const { id: _id, made, [change.key]: _old, ...others }: Record<string, unknown> = { ...before };
  if (change.key === 'text') delete others.symbology;
  const keepsMade = typeof made === 'string' && !isProvisional(made);
  const v = {
    ...others,
    ...(change.value !== null && change.value !== '' && { [change.key]: change.value }),
    read: change.key === 'text' ? 'typed' : (others.read ?? 'typed'),
    made: keepsMade ? made : null,
  };
  return { subject: 'cellMark', part: id, v };
}

/** The entry of a code found on a photo. */
export function foundMarkPut({ text, symbology }: FoundCode, photoId: string): Put {
  return { subject: 'cellMark', part: randomId(), v: { text, read: 'photo', symbology, photoId, made: null } };
}
