import { expect, it } from 'vitest';
import type { DemoPack } from '../../../src/app/demo/demo-pack.ts';
import { DIPPER } from '../../../src/app/demo/dipper.ts';
import { entriesOf } from '../../../src/app/demo/entries-of.ts';
import { WREN } from '../../../src/app/demo/wren.ts';
import { provisionalEntries } from '../../../src/app/state/provisional.ts';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { foldRecord } from '../../../src/record/fold-record.ts';
import { chaptersOf } from '../../../src/sheet/chapters/chapters-of.ts';
import { builtIn, builtInItem } from '../../checklists/built-in.ts';

const NOW_MS = Date.UTC(2026, 10, 25, 14);

function laidOut(pack: DemoPack) {
  const painted = pack.photos.map((_, place) => ({
    sha256: (place + 1).toString(16).padStart(64, '0'),
    byteCount: 100_000,
    widthPx: 1600,
    heightPx: 1200,
  }));
  const puts = entriesOf(
    { ...pack, tests: { ...pack.tests, logs: [] } },
    {
      checklist: { id: builtIn.id, version: builtIn.version, sha256: 'c'.repeat(64) },
      painted,
      logs: [],
      nowMs: NOW_MS,
      utcOffsetMinutes: 60,
    },
  );
  return foldRecord(pack.packId, provisionalEntries(pack.packId, [], puts));
}

it('Wren 24 has one take of 15:20 while it was live and open, its 7 marks all of what is in the record, 4 s later on film', () => {
  const record = laidOut(WREN);
  expect(record.setAside).toEqual([]);
  expect(record.takes).toHaveLength(1);
  const take = record.takes[0];
  expect((take?.endedAtMs ?? 0) - (take?.startedAtMs ?? 0)).toBe(920_000);
  expect(take?.startedAtMs).toBeGreaterThan(record.states.liveOpen?.enteredAtMs ?? Number.NaN);
  expect(take?.endedAtMs).toBeLessThan(record.states.apart?.enteredAtMs ?? Number.NaN);
  const titled = { definition: builtIn, grading: gradeRecord(builtIn, record) };
  const made = chaptersOf(record, titled, take?.id ?? '');
  expect(made).toMatchObject({ goneCount: 0, beforeStartCount: 0, endMs: 924_000 });
  expect(made?.chapters.map(({ startMs, title }) => `${startMs / 1000} ${title}`)).toEqual([
    '0 Start',
    '16 The lid comes off',
    '82 Photo 4',
    `155 ${builtInItem('cell-vents').title}: weak`,
    '176 Photo 5',
    `240 ${builtInItem('sensor-on-vent').title}: weak`,
    '409 Cut-off test: cold, charging',
    `692 ${builtInItem('sense-lead-pass-through').title}: failed`,
  ]);
});

it('Dipper 24 was not filmed: 0 takes', () => {
  expect(laidOut(DIPPER).takes).toEqual([]);
});
