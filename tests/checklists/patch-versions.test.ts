import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { DIPPER_SEAL, WREN_SEAL } from '../sheet/sealed/demo-records.ts';
import { EARLIER_VERSIONS } from '../storage/earlier-versions.ts';
import { admittedFile } from './admitted-file.ts';

const before = admittedFile('lfp-drop-in/1.1.0');
const after = admittedFile('lfp-drop-in/1.1.1');

/** Every pack at hand that a 1.1 checklist can grade: the demo bench and what earlier versions of the app left behind. */
const RECORDS = [
  ...[WREN_SEAL, DIPPER_SEAL].map(({ packId, entries }) => foldRecord(packId, entries)),
  ...EARLIER_VERSIONS.flatMap((earlier) =>
    earlier.records().map(({ packId }) =>
      foldRecord(
        packId,
        earlier.entries().filter(({ key }) => key[0] === packId),
      ),
    ),
  ),
];

describe('lfp-drop-in 1.1.1', () => {
  it('is 1.1.0 with parts and a time for each of its 29 remedies, and nothing else', () => {
    const bare = ({ version: _version, remedies, ...rest }: Checklist) => ({
      ...rest,
      remedies: remedies.map(({ parts: _parts, timeMin: _timeMin, ...remedy }) => remedy),
    });
    expect(bare(after)).toEqual(bare(before));
    expect(after.remedies).toHaveLength(29);
    expect(after.remedies.filter(({ parts, timeMin }) => parts === undefined || timeMin === undefined)).toEqual([]);
  });

  it('gives no time that is 0, ends before it begins or is longer than 24 h', () => {
    const odd = after.remedies.filter(({ timeMin }) => {
      const { from, to } = timeMin ?? { from: 0, to: 0 };
      return from <= 0 || to < from || to > 24 * 60;
    });
    expect(odd).toEqual([]);
  });

  it.each(RECORDS.map((record, place) => [`${record.nameplate.name} (${place + 1})`, record] as const))(
    'moves no figure of %s: its whole grading is that of 1.1.0',
    (_, record) => {
      const grading = gradeRecord(before, record);
      expect(grading.settledCount).toBeGreaterThan(0);
      expect(gradeRecord(after, record)).toEqual(grading);
    },
  );

  it('was held against at least 8 packs', () => {
    expect(RECORDS.length).toBeGreaterThanOrEqual(8);
  });
});
