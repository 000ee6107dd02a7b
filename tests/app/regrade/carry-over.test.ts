import { describe, expect, it } from 'vitest';
import { carryOverChange, withReopening } from '../../../src/app/regrade/carry-over-change.ts';
import { moveRows } from '../../../src/app/regrade/move-rows.ts';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import type { Judged } from '../../../src/grading/judged.ts';
import { scoreMoves } from '../../../src/grading/score-moves.ts';
import { graded } from '../../grading/answer-with.ts';
import { packOf } from '../../grading/live-tests/tested-pack.ts';
import { definitionWith, rawItem } from '../../grading/small-definition.ts';

const ONE = rawItem({ id: 'one', zone: 'case' });
const TWO = rawItem({ id: 'two', zone: 'case', hazard: 'chafe', severity: 2 });
const THREE = rawItem({ id: 'three', zone: 'case', hazard: 'chafe', severity: 1 });
const BASE = { zones: [{ id: 'case', title: 'Case', weight: 1 }], items: [ONE, TWO], remedies: [] };
const loaded = (parts: Parameters<typeof definitionWith>[0]) => ({
  definition: definitionWith({ ...BASE, ...parts }),
  text: '{}',
  sha256: 'b'.repeat(64),
});

describe('carrying over', () => {
  const earlier = { id: 'small', version: '1.0.0', sha256: 'a'.repeat(64) };
  const record = { ...packOf({}), checklist: earlier };
  const to = loaded({ version: '1.1.0' });

  it('is one change of two entries: what it is graded by, and what it was graded by', () => {
    expect(carryOverChange(record, to)).toEqual({
      puts: [
        { subject: 'pack', part: 'carriedFrom', v: earlier },
        { subject: 'pack', part: 'checklist', v: { id: 'small', version: '1.1.0', sha256: 'b'.repeat(64) } },
      ],
      definition: { sha256: 'b'.repeat(64), text: '{}' },
      undoLabel: 'Carried over to 1.1.0',
    });
  });

  it('opens a closed sheet in the same change, and an open or already reopened one not at all', () => {
    const change = carryOverChange(record, to);
    const why = { reason: 'graded by checklist 1.1.0', openedAtMs: 7 };
    const sha256 = 'c'.repeat(64);
    const reopened = withReopening(change, { sheet: { now: 'closed', sha256, revision: 2 } }, why);
    expect(reopened.puts).toEqual([
      { subject: 'reopening', part: expect.stringMatching(/^[0-9a-f]{32}$/), v: { after: sha256, ...why } },
      ...change.puts,
    ]);
    expect(withReopening(change, { sheet: { now: 'open' } }, why)).toBe(change);
    const revising = { now: 'revising' as const, sha256, revision: 2, reason: 'typo', openedAtMs: 1 };
    expect(withReopening(change, { sheet: revising }, why)).toBe(change);
  });
});

describe('lines of what moved', () => {
  const record: Judged = { route: 'whole', facts: {}, answers: { one: graded('passable'), two: graded('weak') } };
  function rowsTo(parts: Parameters<typeof definitionWith>[0]) {
    const [from, to] = [loaded({}), loaded({ version: '1.1.0', ...parts })];
    const [was, now] = [from, to].map(({ definition }) => gradeRecord(definition, record));
    if (was === undefined || now === undefined) throw new Error('two gradings');
    const moves = scoreMoves(
      { definition: from.definition, grading: was },
      { definition: to.definition, grading: now },
    );
    return moveRows({ packId: '', label: '', closed: false, from, to, was, now, moves });
  }

  // 52.25 settled shows as 52.3. Thirds of 100 with one open: Build 36.667, chafe now I × C high 0.40: 14.667, down to 14.6.
  // Item −33.333, others +15, chafe takes 36.667·0.6 = 22 in place of 2.75: −19.25; all −37.583, shown −37.7.
  it('add up as shown from 52.3 to 14.6, the weightiest first, with the item that brings the hazard named', () => {
    const rows = rowsTo({ items: [ONE, TWO, THREE] });
    expect(rows.map(({ text }) => text)).toEqual([
      'Low end by 1.0.0',
      'three',
      'chafe, factor',
      '2 other items weigh otherwise beside them',
      'Low end by 1.1.0',
    ]);
    expect(rows[2]?.detail).toBe('medium risk before, high after; now also by three');
    const tenths = rows.map(({ points }) => Math.round(Number(points.replace('\u2212', '-')) * 10));
    expect([tenths[0], tenths.at(-1)]).toEqual([523, 146]);
    expect(tenths.slice(0, -1).reduce((sum, value) => sum + value, 0)).toBe(146);
  });

  it('show no points where one of the two withholds the score', () => {
    const stop = rawItem({ id: 'two', zone: 'case', stop: true, grades: { sound: 'S.', weak: 'W.', failed: 'F.' } });
    const failed: Judged = { ...record, answers: { ...record.answers, two: graded('failed') } };
    const [from, to] = [loaded({}), loaded({ version: '1.1.0', items: [ONE, stop] })];
    const was = gradeRecord(from.definition, failed);
    const now = gradeRecord(to.definition, failed);
    const moves = scoreMoves(
      { definition: from.definition, grading: was },
      { definition: to.definition, grading: now },
    );
    const rows = moveRows({ packId: '', label: '', closed: false, from, to, was, now, moves });
    expect(rows.at(-1)).toMatchObject({ text: 'Low end by 1.1.0', points: '–' });
    expect(rows.slice(1, -1).every(({ points }) => points === '')).toBe(true);
  });
});
