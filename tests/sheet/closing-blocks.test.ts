import { describe, expect, it } from 'vitest';
import type { Block, SectionId, Sheet } from '../../src/sheet/model/sheet.ts';
import {
  attachment,
  CLOSED_ONCE,
  CLOSED_TWICE,
  closedSheet,
  FIRST,
  HASH_1,
  HASH_2,
  HASH_2_GROUPS,
  REVISING,
} from './closed-pack.ts';

const blocksOf = (sheet: Sheet, id: SectionId): Block[] =>
  sheet.sections.find((section) => section.id === id)?.blocks ?? [];
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const lineOf = (block: Block): string => {
  if (block.kind === 'paragraph') return `${block.tone}: ${block.text}`;
  if (block.kind === 'subhead') return `# ${block.text}`;
  if (block.kind === 'hash') return `${block.label}: ${block.groups.join(' ')}`;
  if (block.kind === 'quote') return `${block.label} > ${block.text}`;
  if (block.kind !== 'table') throw new Error(`no block of this section: ${block.kind}`);
  return block.rows.map(({ label, value, note }) => `${label}: ${value}${note ? ` / ${note}` : ''}`).join('\n');
};
const lines = (sheet: Sheet, id: SectionId) => blocksOf(sheet, id).map((block) => plain(lineOf(block)));
const standing = ({ head }: Sheet) => plain(`${head.standing?.tone}: ${head.standing?.text}`);
const marks = ({ head }: Sheet) => head.marks.filter((mark) => !['invented demo', 'draft checklist'].includes(mark));

describe('a sheet never closed', () => {
  const sheet = closedSheet({});

  it('says so in its mark, its head and its section, and has no SHA-256', () => {
    expect(marks(sheet)).toEqual(['not closed']);
    expect(sheet.standingMark).toBe('not closed');
    expect(standing(sheet)).toBe('muted: Not closed: it may still change.');
    expect(lines(sheet, 'closing')).toEqual(['plain: Not closed: it may still change.']);
    expect(blocksOf(sheet, 'attached')).toEqual([]);
  });
});

describe('a sheet closed once', () => {
  const sheet = closedSheet(CLOSED_ONCE);

  it('is marked “Closed, revision 1” and says when: 25 November 2026, 10:02 at UTC+01:00', () => {
    expect(marks(sheet)).toEqual(['Closed, revision 1']);
    expect(standing(sheet)).toBe(
      'muted: Closed as revision 1 on 25 November 2026, 10:02. Its SHA-256 stands under “Closed and revised”.',
    );
  });

  it('lists day, offset, app, verdict and score, the SHA-256 in 16 groups of 4, and how to check it', () => {
    expect(lines(sheet, 'closing')).toEqual([
      '# Revision 1, this sheet',
      [
        'Closed: 25 November 2026, 10:02 (UTC+01:00) / with Underlid 0.4.0',
        'Verdict it came to: Workshop first',
        'Score it came to: 14.5–19.5',
      ].join('\n'),
      'SHA-256 of the JSON of revision 1: e3b0 c442 98fc 1c14 9afb f4c8 996f b924 27ae 41e4 649b 934c a495 991b 7852 b855',
      expect.stringMatching(/^muted: The SHA-256 is that of the sheet’s JSON file.*sha256sum.*Recheck a sheet.*Keep/),
    ]);
  });

  it('is the same sheet whether it is named as the one shown or not', () => {
    expect(closedSheet(CLOSED_ONCE, { shownRevision: HASH_1 })).toEqual(sheet);
  });

  it('does not claim for ever that no reply was received, only of the day it was closed', () => {
    expect(lines(sheet, 'words')[1]).toMatch(/None had been received when this sheet was closed\.$/);
    expect(lines(closedSheet({}), 'words')[1]).toMatch(/None has been received\.$/);
  });

  it.each([
    [1, 'One entry has come in since it was closed and is in no revision.'],
    [3, '3 entries have come in since it was closed and are in no revision.'],
  ])('warns in mark, head and section that %d came in since', (sinceClosing, sentence) => {
    const grown = closedSheet(CLOSED_ONCE, { sinceClosing });
    expect(marks(grown)).toEqual(['Closed, revision 1', 'more has come in since']);
    expect(standing(grown)).toContain(`caution: ${sentence} Closed as revision 1`);
    expect(lines(grown, 'closing')[0]).toBe(`caution: ${sentence}`);
  });

  it('warns that this version works 2 lines out otherwise', () => {
    const [first] = lines(closedSheet(CLOSED_ONCE, { otherLines: 2 }), 'closing');
    expect(first).toMatch(/^caution: This version of Underlid works 2 lines out otherwise/);
  });
});

describe('a score that was withheld, and one of which there is nothing', () => {
  const cameTo = (given: Partial<typeof FIRST>) => {
    const sheet = closedSheet({ ...CLOSED_ONCE, closings: [{ ...FIRST, score: null, ...given }] });
    return lines(sheet, 'closing')[1]?.split('\n').slice(1);
  };

  it('are said in words', () => {
    expect(cameTo({ verdict: { low: 'stop', high: 'stop' } })).toEqual([
      'Verdict it came to: Stop: treat as damaged',
      'Score it came to: withheld',
    ]);
    expect(cameTo({ verdict: { low: 'noFinding', high: 'noFinding' } })).toEqual([
      'Verdict it came to: No finding on this sample',
      'Score it came to: nothing to score',
    ]);
  });
});

describe('revision 2', () => {
  const sheet = closedSheet(CLOSED_TWICE, { shownRevision: HASH_2 });

  it('stands first, with what it takes the place of and why, 48.3 settled; then the one it replaced', () => {
    expect(marks(sheet)).toEqual(['Closed, revision 2']);
    expect(lines(sheet, 'closing').slice(0, -1)).toEqual([
      '# Revision 2, this sheet',
      [
        'Closed: 3 December 2026, 00:40 (UTC+01:00) / with Underlid 0.4.0',
        'Takes the place of: revision 1 of 25 November 2026, 10:02',
        'Why it was made: The lug was crimped again before it was sent',
        'Verdict it came to: No serious finding, mind the list',
        'Score it came to: 48.3',
      ].join('\n'),
      `SHA-256 of the JSON of revision 2: ${HASH_2_GROUPS}`,
      '# Revision 1',
      [
        'Closed: 25 November 2026, 10:02 (UTC+01:00) / with Underlid 0.4.0',
        'Replaced by: revision 2 of 3 December 2026, 00:40',
        'Verdict it came to: Workshop first',
        'Score it came to: 14.5–19.5',
      ].join('\n'),
      expect.stringMatching(/^SHA-256 of the JSON of revision 1: e3b0 c442/),
    ]);
  });

  it('says so where the revision it takes the place of is not here', () => {
    const { closings } = CLOSED_TWICE;
    const alone = closedSheet({ ...CLOSED_TWICE, closings: (closings ?? []).slice(1) });
    expect(lines(alone, 'closing')[1]).toContain('Takes the place of: a revision that is not on this phone');
  });
});

describe('revision 1 looked at after revision 2', () => {
  const sheet = closedSheet(CLOSED_TWICE, { shownRevision: HASH_1 });

  it('is headed by a caution that names revision 2, its day and its reason, and marked on every page', () => {
    expect(standing(sheet)).toBe(
      'caution: Revision 1, replaced by revision 2 on 3 December 2026: The lug was crimped again before it was sent.',
    );
    expect(marks(sheet)).toEqual(['Revision 1, replaced']);
    expect(sheet.standingMark).toBe('Revision 1, replaced');
    expect(lines(sheet, 'closing')[0]).toBe(standing(sheet));
    expect(lines(sheet, 'closing')).toContain('# Revision 1, this sheet');
  });

  it('is not said to have grown by what came in after revision 2', () => {
    expect(closedSheet(CLOSED_TWICE, { shownRevision: HASH_1, sinceClosing: 3 })).toEqual(sheet);
  });

  it('closed by two phones at once says which of the two counts, and that neither replaced the other', () => {
    const other = { ...FIRST, sha256: HASH_2, closedAtMs: FIRST.closedAtMs + 60_000 };
    const twins = { closings: [FIRST, other], sheet: { now: 'closed', sha256: HASH_2, revision: 1 } } as const;
    const older = closedSheet({ ...twins, closings: [...twins.closings] }, { shownRevision: HASH_1 });
    expect(standing(older)).toBe(
      'caution: Revision 1 of 25 November 2026, 10:02. It was closed on another phone too: revision 1 of 25 November 2026, 10:03 counts.',
    );
    expect(lines(older, 'closing').join('\n')).not.toContain('Replaced by');
  });
});

describe('a sheet being revised', () => {
  it('says since when, why, and that revision 1 counts until revision 2 is closed', () => {
    const sheet = closedSheet(REVISING);
    expect(marks(sheet)).toEqual(['not closed: revision 2 in the making']);
    expect(standing(sheet)).toBe(
      'caution: Being revised since 1 December 2026, 09:00: A photo was found. It may still change until revision 2 is closed; until then revision 1 counts.',
    );
    expect(lines(sheet, 'closing').slice(0, 2)).toEqual([standing(sheet), '# Revision 1']);
  });

  it('shown as it was closed is headed by that too', () => {
    const sheet = closedSheet(REVISING, { shownRevision: HASH_1 });
    expect(marks(sheet)).toEqual(['Closed, revision 1']);
    expect(standing(sheet)).toBe(
      'caution: Revision 1 as it was closed. Opened again on 1 December 2026, 09:00: A photo was found. Revision 2 is in the making.',
    );
    expect(lines(sheet, 'closing')[1]).toBe('# Revision 1, this sheet');
  });
});

describe('what is attached', () => {
  const reply = attachment({});
  const correction = attachment({ id: '3'.repeat(32), kind: 'correction', text: 'The lug is 35 mm².', from: '' });
  const { on: _, ...older } = attachment({
    id: '4'.repeat(32),
    kind: 'correction',
    text: 'Mass is 24 kg.',
    to: HASH_1,
  });
  const sheet = closedSheet({ ...CLOSED_TWICE, attachments: [reply, correction, older] });

  it('stands apart: corrections of the tester, then the maker’s own words, each with its revision, giver and day', () => {
    expect(lines(sheet, 'attached')).toEqual([
      '# Corrections, by the tester',
      'muted: Found to be wrong after closing.',
      'Correction to revision 2 · 4 December 2026 > The lug is 35 mm².',
      'Correction to revision 1 · Wren Works > Mass is 24 kg.',
      '# Replies of the maker',
      'muted: The maker’s own words, printed whole. Not checked by the tester.',
      'Reply to revision 2 · Wren Works · 4 December 2026 > We have changed the crimp tool.\nFrom serial 2200 on every lug is pulled.',
    ]);
  });

  it('is marked in the head, a correction of another revision with its number', () => {
    expect(marks(sheet)).toEqual([
      'Closed, revision 2',
      'correction attached',
      'correction to revision 1 attached',
      'maker’s reply attached',
    ]);
  });

  it('changes nothing of the sheet but its own section and the marks', () => {
    const before = closedSheet(CLOSED_TWICE);
    const after = closedSheet({ ...CLOSED_TWICE, attachments: [reply], newestAt: '9'.repeat(15) });
    const rest = ({ sections, head, ...others }: Sheet) => ({
      ...others,
      sections: sections.filter(({ id }) => id !== 'attached'),
      head: { ...head, marks: [] },
    });
    expect(rest(after)).toEqual(rest(before));
    expect(marks(before)).toEqual(['Closed, revision 2']);
    expect(marks(after)).toEqual(['Closed, revision 2', 'maker’s reply attached']);
    expect(after.sections.map(({ id }) => id)).toContain('attached');
    expect(before.sections.map(({ id }) => id)).not.toContain('attached');
  });
});
