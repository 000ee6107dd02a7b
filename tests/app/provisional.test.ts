import { describe, expect, it } from 'vitest';
import { newestWritten, provisionalEntries } from '../../src/app/state/provisional.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';

const PACK = '0123456789abcdef0123456789abcdef';
const AT = `000001790000000.000000.${'1'.repeat(32)}`;
const stored: Entry[] = [
  { key: [PACK, 'pack', 'made'], v: {}, at: AT, by: '1'.repeat(32) },
  { key: [PACK, 'nameplate', 'name'], v: 'Heron', at: AT, by: '1'.repeat(32) },
];

describe('what is shown before it is written', () => {
  it('dates a record by the newest stamp that was drawn, never by one that stands in', () => {
    const shown = provisionalEntries(PACK, stored, [{ subject: 'nameplate', part: 'maker', v: 'Coot' }]);
    expect(newestWritten(shown)).toBe(AT);
    expect(
      newestWritten(provisionalEntries(PACK, [], [{ subject: 'nameplate', part: 'maker', v: 'Coot' }])),
    ).toBeNull();
  });

  it('replaces 1 value and keeps the other', () => {
    const shown = provisionalEntries(PACK, stored, [{ subject: 'nameplate', part: 'name', v: 'Coot' }]);
    expect(shown).toHaveLength(2);
    expect(foldRecord(PACK, shown).nameplate.name).toBe('Coot');
    expect(foldRecord(PACK, stored).nameplate.name).toBe('Heron');
  });

  it('takes a value away by a tombstone that folds to nothing', () => {
    const shown = provisionalEntries(PACK, stored, [{ subject: 'nameplate', part: 'name', gone: true }]);
    expect(foldRecord(PACK, shown).nameplate).toEqual({});
  });

  it('gives a value that waits for its stamp one that folds, after every stored one', () => {
    const photo = { zone: 'vents', widthPx: 4, heightPx: 3, byteCount: 9, originalSha256: 'b'.repeat(64), made: null };
    const shown = provisionalEntries(PACK, stored, [{ subject: 'photo', part: 'a'.repeat(64), v: photo }]);
    const [folded] = foldRecord(PACK, shown).photos;
    expect(folded?.zone).toBe('vents');
    expect((folded?.made ?? '') > AT).toBe(true);
  });
});
