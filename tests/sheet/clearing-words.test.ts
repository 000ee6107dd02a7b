import { describe, expect, it } from 'vitest';
import { clearingWords } from '../../src/sheet/model/clearing-words.ts';
import { makeSheet } from '../../src/sheet/model/make-sheet.ts';
import { makeOwnerSheet } from '../../src/sheet/model/owner-sheet.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import { sheetContext } from '../../src/sheet/model/sheet-context.ts';
import { smallestSetBlocks } from '../../src/sheet/model/smallest-set-blocks.ts';
import { DIPPER_INPUT, inputOf, WREN_INPUT } from './exports/inputs.ts';
import { HUT_CHECKLIST, hutRecord } from './hut-pack.ts';

/**
 * Of Wren's printed list, by its table of items and risks: 1 fuse (failed over-current), 3 sheets (between cans, not
 * looked at), 4 bush (failed pass-through), 6 vents (weak) and 7 sensor (weak, on a vent) are each alone in bringing
 * one serious item down. At its best what is between the cans is sound, so 3 falls away.
 */
const WREN_WORDS =
  'Open items at their worst: Remedies 1, 3, 4, 6 and 7 below together clear every high and serious risk: Relief blocked, Over-current not cut off, Can or case short and Chafe short. At their best: remedies 1, 4, 6 and 7 are enough.';

const advice = (sheet: Sheet): string[] =>
  sheet.sections.flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'verdict' ? block.advice : [])));

describe('which remedies clear the serious risks of Wren 24', () => {
  it('names 1, 3, 4, 6 and 7 at worst and 1, 4, 6 and 7 at best, the two that only help one another among them', () => {
    expect(clearingWords(sheetContext(WREN_INPUT)).text).toBe(WREN_WORDS);
  });

  it('says the same 2 sentences in the verdict of the sheet, on the owner’s page and on the screen of remedies', () => {
    expect(advice(makeSheet(WREN_INPUT))).toEqual([WREN_WORDS]);
    expect(advice(makeOwnerSheet(WREN_INPUT, 'a4'))).toEqual([WREN_WORDS]);
    const [said, listed] = smallestSetBlocks(sheetContext(WREN_INPUT));
    expect(said).toMatchObject({ kind: 'paragraph', text: WREN_WORDS });
    expect(listed?.kind === 'list' ? listed.items.map(({ text }) => text.slice(0, 2)) : []).toEqual([
      '1.',
      '3.',
      '4.',
      '6.',
      '7.',
    ]);
  });
});

describe('where the set is small or of no use', () => {
  it('names the 1 remedy of the hut’s pack by its number in the printed order, where the label comes first', () => {
    expect(clearingWords(sheetContext(inputOf(hutRecord()))).text).toBe(
      'Remedy 2 below clears every high and serious risk by itself: Hot joint.',
    );
  });

  it('names what no remedy clears, in the verdict too: 0 of 1 hazards, and 1 of 2', () => {
    const failedVents = {
      ...hutRecord().answers,
      'cell-vents': { kind: 'grade', grade: 'failed', evidence: 'seen' },
    } as const;
    const record = hutRecord({ answers: failedVents });
    expect(advice(makeSheet(inputOf(record)))).toEqual([
      'No listed remedy clears: Relief blocked. Remedy 2 below clears all other high and serious risks by itself: Hot joint.',
    ]);
    expect(advice(makeSheet(inputOf(record, { ...HUT_CHECKLIST, remedies: [] })))).toEqual([
      'No listed remedy clears: Hot joint and Relief blocked.',
    ]);
  });

  it('names 2 outside remedies that are enough, and not the 1 of a workshop that does as much', () => {
    const failedVents = {
      ...hutRecord().answers,
      'cell-vents': { kind: 'grade', grade: 'failed', evidence: 'seen' },
    } as const;
    const settles = [
      { item: 'main-lug', leaves: 'sound' as const },
      { item: 'cell-vents', leaves: 'sound' as const },
    ];
    const remedies = [
      { id: 'all-anew', text: 'Build it anew.', reach: 'workshop' as const, settles },
      { id: 'lug', text: 'Turn the lug.', reach: 'outside' as const, settles: settles.slice(0, 1) },
      { id: 'vents', text: 'Clear the vents.', reach: 'outside' as const, settles: settles.slice(1) },
    ];
    const context = sheetContext(inputOf(hutRecord({ answers: failedVents }), { ...HUT_CHECKLIST, remedies }));
    expect(context.grading.verdict.low).toBe('notAsItComes');
    expect(clearingWords(context).remedyIds.toSorted()).toEqual(['lug', 'vents']);
  });

  it('says nothing of Dipper 24, where nothing stands above medium: 0 lines of advice', () => {
    expect(clearingWords(sheetContext(DIPPER_INPUT)).text).toBeNull();
    expect(advice(makeSheet(DIPPER_INPUT))).toEqual([]);
  });
});
