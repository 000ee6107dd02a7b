import type { Put } from '../../storage/store.ts';

interface NumberedPlace {
  subject: 'cell' | 'parallelShare';
  setId: string;
  /** Counted from 1. */
  number: number;
  /** As stored now, with its number; undefined where nothing is. */
  before: object | undefined;
}

/**
 * The entry of one cell or share with one field changed; null takes the field away, and the last one its entry: what
 * was not read has none. Fields of a newer version stay.
 */
export function numberedPut(
  { subject, setId, number, before }: NumberedPlace,
  key: string,
  value: number | string | null,
): Put {
  const { number: _number, [key]: _before, ...others } = { ...before } as Record<string, unknown>;
  const v = value === null || value === '' ? others : { ...others, [key]: value };
  const place = { subject, part: `${setId}/${number}` };
  return Object.keys(v).length === 0 ? { ...place, gone: true } : { ...place, v };
}
