import { describe, expect, it } from 'vitest';
import { changesSince } from '../../src/grading/changes-since.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import { makeSheet } from '../../src/sheet/model/make-sheet.ts';
import { type Since, sinceBlocks } from '../../src/sheet/model/since-blocks.ts';
import { deepFreeze } from '../grading/deep-freeze.ts';
import { HUT_CHECKLIST, hutRecord, hutSheet } from './hut-pack.ts';

const packed = (record: PackRecord) => ({
  definition: HUT_CHECKLIST,
  record,
  grading: gradeRecord(HUT_CHECKLIST, record),
});

/** As hut-pack.ts has it: main lug failed, label weak, lid not seen, vents passable. */
const EARLIER = hutRecord();
/** Label put right, vents weak, lug not looked at; 110 Ah promised in place of 100, 23.5 kg in place of 24, no price yet. */
const LATER = hutRecord({
  nameplate: {
    name: 'Wren 24',
    sample: '2',
    nominalVoltageV: 25.6,
    ratedCapacityAh: 110,
    massKg: 23.5,
    currency: 'EUR',
  },
  answers: {
    ...EARLIER.answers,
    'case-label': { kind: 'grade', grade: 'sound', evidence: 'seen' },
    'main-lug': { kind: 'notSeen', reason: 'Sleeved' },
    'cell-vents': { kind: 'grade', grade: 'weak', evidence: 'seen' },
  },
});

function sinceOf(was: PackRecord, now: PackRecord): Since {
  return deepFreeze({
    here: true,
    kind: 'sample',
    label: 'Wren 24 · sample 1',
    changes: changesSince(packed(was), packed(now)),
    currency: { was: was.nameplate.currency, now: now.nameplate.currency },
  } satisfies Since);
}
const plain = (value: unknown) => JSON.parse(JSON.stringify(value).replaceAll('\u00a0', ' '));

describe('since the earlier sample', () => {
  it('lists one new, one gone, one not looked at again, then what both nameplates say', () => {
    const blocks = plain(sinceBlocks(sinceOf(EARLIER, LATER), 'metric'));
    const list = (title: string) => blocks[blocks.findIndex(({ text }: { text?: string }) => text === title) + 1].items;
    expect(list('New')).toEqual([{ text: 'Cell vents:', detail: 'weak now, passable then' }]);
    expect(list('Gone')).toEqual([{ text: 'Label:', detail: 'sound now, weak then' }]);
    expect(list('Found then, not looked at again')).toEqual([
      { text: 'Main lug:', detail: 'open now (not seen), failed then' },
    ]);
    expect(blocks.at(-1).rows).toEqual([
      { label: 'Maker', value: 'Wren Works then, left empty now' },
      { label: 'Rated capacity', value: '100 Ah then, 110 Ah now' },
      { label: 'Cells in series', value: '8 then, left empty now' },
      { label: 'Mass, weighed', value: '24 kg then, 23.5 kg now' },
    ]);
    expect(JSON.stringify(blocks)).toContain('7 items are asked by both records.');
  });

  it('says 52.9 lb and 51.8 lb where the phone shows pounds', () => {
    const text = JSON.stringify(plain(sinceBlocks(sinceOf(EARLIER, LATER), 'imperial')));
    expect(text).toContain('52.9 lb then, 51.8 lb now');
  });

  it('of a record and itself says that nothing is new, worse, better or gone', () => {
    const text = JSON.stringify(sinceBlocks(sinceOf(EARLIER, EARLIER), 'metric'));
    expect(text).toContain('none is new, worse, better or gone');
    expect(text).not.toContain('On the nameplate and by the scale');
  });

  it('names the earlier pack when its record is not on this phone, and compares nothing', () => {
    const blocks = sinceBlocks({ here: false, because: 'absent', kind: 'productRevision', label: 'Wren 24' }, 'metric');
    expect(blocks).toHaveLength(2);
    expect(JSON.stringify(blocks)).toContain('The record of Wren 24 is not on this phone');
  });
});

describe('on the sheet', () => {
  it('stands as a section of its own after the ledger, and every other section is as without it', () => {
    const without = hutSheet(LATER);
    const sheet = makeSheet({
      ...packed(LATER),
      definitionSha256: 'c'.repeat(64),
      since: sinceOf(EARLIER, LATER),
      appVersion: '0.1.0',
      units: 'metric',
      locale: 'en',
      utcOffsetMinutes: 60,
    });
    const ids = sheet.sections.map(({ id }) => id);
    expect(ids[ids.indexOf('ledger') + 1]).toBe('since');
    expect(without.sections.map(({ id }) => id)).not.toContain('since');
    expect({ ...sheet, sections: sheet.sections.filter(({ id }) => id !== 'since') }).toEqual(without);
  });
});
