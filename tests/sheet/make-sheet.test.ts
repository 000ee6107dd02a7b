import { describe, expect, it } from 'vitest';
import type { Block, Section, SectionId, Sheet } from '../../src/sheet/model/sheet.ts';
import { HUT_CHECKLIST, hutPhoto, hutRecord, hutSheet, LUG_NOTE, stampAt } from './hut-pack.ts';

// Expected figures are worked by hand from DESIGN §5 on the checklist printed in hut-pack.ts:
// enclosure q 0.175–0.675, wiring 0.2, vents 0.875; Build (q_e + 2·q_w + q_v)/4 = 36.25–48.75; one high risk, × 0.40.

const sectionOf = (sheet: Sheet, id: SectionId): Section | undefined =>
  sheet.sections.find((section) => section.id === id);
const blocksOf = (sheet: Sheet, id: SectionId): Block[] => sectionOf(sheet, id)?.blocks ?? [];
const kinds = (sheet: Sheet, id: SectionId) => blocksOf(sheet, id).map(({ kind }) => kind);
const pick = <K extends Block['kind']>(sheet: Sheet, id: SectionId, kind: K) =>
  blocksOf(sheet, id).filter((block): block is Extract<Block, { kind: K }> => block.kind === kind);
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const allText = (sheet: Sheet) => plain(JSON.stringify(sheet));

describe('an unsettled pack with two findings', () => {
  const sheet = hutSheet();

  it('has these thirteen sections and these blocks, none more', () => {
    expect(sheet.sections.map(({ id, blocks }) => [id, blocks.map(({ kind }) => kind).join(' ')])).toEqual([
      ['result', 'verdict rule figures paragraph zones'],
      ['findings', 'finding finding'],
      ['promised', 'figures paragraph subhead table'],
      ['remedies', 'paragraph remedy remedy figures'],
      ['ledger', 'paragraph ledger paragraph'],
      ['open', 'subhead list subhead list subhead list'],
      ['method', 'subhead list subhead list paragraph subhead table subhead table paragraph paragraph'],
      ['afterwards', 'table paragraph'],
      ['words', 'quote paragraph'],
      ['answers', 'answers answers answers'],
      ['closing', 'paragraph'],
      ['sources', 'subhead list subhead list subhead list paragraph paragraph'],
      ['cautions', 'list'],
    ]);
  });

  it('is headed by name, rating, sample, how it came and the local day of the newest entry, 25 November', () => {
    expect(sheet.title).toBe('Wren 24 · sample 1');
    expect(plain(sheet.head.overline)).toBe('Build-quality sheet · 25 November 2026');
    expect(plain(sheet.head.line)).toBe('25.6 V 100 Ah · sample 1 · bought');
    expect(sheet.head.marks).toEqual(['not closed', 'invented demo', 'draft checklist']);
    expect(sheet.demoMark).toBe('invented demo');
    expect(plain(sheet.head.caution)).toBe('One sample, as found on 25 November 2026. No certification.');
  });

  it('shows Build 36.2–48.8, × 0.40, Score 14.5–19.5, 16.5–21.5 from outside, 81.2–93.8 after all', () => {
    const [figures] = pick(sheet, 'result', 'figures');
    expect(figures?.figures.map(({ label, value }) => `${label}: ${plain(value)}`)).toEqual([
      'Build: 36.2–48.8',
      'Factor: × 0.40',
      'Score: 14.5–19.5',
      'After outside work: 16.5–21.5',
      'After all work: 81.2–93.8',
    ]);
  });

  it('says Workshop first and which remedy clears the hot joint', () => {
    expect(pick(sheet, 'result', 'verdict')[0]).toMatchObject({
      title: 'Workshop first',
      settled: true,
      stop: false,
      advice: ['Remedy 2 below clears every high and serious risk by itself: Hot joint.'],
    });
  });

  it('shows the zones at 17–68, 20 and 88 with the glyph of the worst grade found', () => {
    expect(pick(sheet, 'result', 'zones')[0]?.rows.map(({ title, shown, glyph }) => [title, shown, glyph])).toEqual([
      ['Enclosure', '17–68', 'weak'],
      ['Wiring', '20', 'failed'],
      ['Vents', '88', 'passable'],
    ]);
  });

  it('lists the high risk first, in full: sentence, risk, harm, evidence, cost 40.0, basis, the tester’s words', () => {
    expect(pick(sheet, 'findings', 'finding')[0]).toEqual({
      kind: 'finding',
      itemId: 'main-lug',
      number: 1,
      title: 'Main lug',
      glyph: 'failed',
      gradeWord: 'failed',
      sentence: 'Strands end short of the barrel.',
      line: 'Wiring · high risk · severity II critical · likelihood B probable',
      evidence: 'measured · no photo · costs 40.0 points of Build',
      harm: 'Hot joint: A joint glows and sets light to what is near it.',
      likelihoodReason: null,
      basis: 'Basis: 33 CFR 183.445(a) (analogy).',
      note: { label: 'The tester notes', text: LUG_NOTE },
      photos: [],
    });
  });

  it('accounts for every tenth: 100 − 12.5 − 8.2 − 40.0 − 3.1 = 36.2, − 21.7 = 14.5', () => {
    const rows = pick(sheet, 'ledger', 'ledger')[0]?.rows ?? [];
    expect(rows.map(({ text, points }) => `${text} ${points}`)).toEqual([
      'A pack with nothing to find 100.0',
      'Lid seal · Enclosure −12.5',
      'Label · Enclosure −8.2',
      'Main lug · Wiring −40.0',
      'Cell vents · Vents −3.1',
      'Build 36.2',
      'Hot joint, × 0.40 −21.7',
      'Score 14.5',
    ]);
    expect(rows[1]?.detail).toBe('still open');
    const costs = pick(sheet, 'findings', 'finding').map(({ evidence }) => /costs ([\d.]+)/.exec(evidence)?.[1]);
    expect(costs).toEqual(['40.0', '8.2']);
  });

  it('prints outside before workshop: +2.0 to 16.5–21.5, then +64.7–72.3 to 81.2–93.8', () => {
    expect(
      pick(sheet, 'remedies', 'remedy').map(({ text, reachWord, gain, after }) => [text, reachWord, gain, after]),
    ).toEqual([
      ['Put a true label on the case.', 'from outside', '+2.0', 'then 16.5–21.5'],
      ['Crimp a new main lug.', 'workshop', '+64.7–72.3', 'then 81.2–93.8'],
    ]);
  });

  it('names what was not seen with its reason, what was told, and the one item not looked at singly', () => {
    expect(pick(sheet, 'open', 'list').map(({ items }) => items)).toEqual([
      [{ text: 'Lid seal', detail: 'Enclosure · Behind potting' }],
      [{ text: 'Cell vents', detail: 'Vents' }],
      [{ text: 'Tidy runs', detail: 'Wiring' }],
    ]);
    expect(pick(sheet, 'open', 'subhead')[2]?.text).toMatch(/^One item was not looked at singly/);
  });

  it('promises 100 Ah and 2560 Wh for 250.00 EUR a kWh and says that delivery was not tested', () => {
    const [figures] = pick(sheet, 'promised', 'figures');
    expect(figures?.figures.map(({ value }) => plain(value))).toEqual(['100 Ah · 2560 Wh', 'not tested', 'EUR 250.00']);
  });

  it('keeps make safe at 13:05 local with voltage and company, and what was left behind at each state', () => {
    const lists = pick(sheet, 'method', 'list').map(({ items }) =>
      items.map(({ text, detail }) => plain(`${text} / ${detail}`)),
    );
    expect(lists).toEqual([
      [
        '24 November 2026, 13:05: pack at 26.1 V / at or under about 30 % charge · a second person present · 2 cautions acknowledged',
      ],
      [
        'Untouched: from 24 November 2026, 13:10 / undefined',
        'Apart: from 24 November 2026, 16:00 / left behind, no longer to be seen: Lid seal',
      ],
    ]);
  });

  it('names the checklist with its version and SHA-256', () => {
    expect(allText(sheet)).toContain('Hut packs (hut 0.3.0)');
    expect(allText(sheet)).toContain('c'.repeat(64));
  });

  it('says of a pack closed again: do not ship, sell or lend it', () => {
    expect(pick(sheet, 'afterwards', 'paragraph')[0]).toMatchObject({ tone: 'caution' });
    expect(allText(sheet)).toContain('do not ship, sell or lend it');
  });

  it('keeps opinion apart and offers the maker a reply', () => {
    expect(pick(sheet, 'words', 'quote')[0]?.label).toBe('Opinion of M. Bench, apart from the findings');
    expect(allText(sheet)).toContain('The maker has the right to reply.');
  });

  it('prints a clause known from memory among the sources only, never as the basis of a finding', () => {
    expect(JSON.stringify(blocksOf(sheet, 'findings'))).not.toContain('Remembered');
    expect(JSON.stringify(blocksOf(sheet, 'sources'))).toContain('Remembered clause 9.9');
  });

  it('gives every asked item one row: 3 + 2 + 2', () => {
    expect(pick(sheet, 'answers', 'answers').map(({ rows }) => rows.length)).toEqual([3, 2, 2]);
  });

  it('has no undefined, null word or NaN in any text', () => {
    expect(allText(sheet)).not.toMatch(/undefined|NaN|\bnull [a-z]|\[object/);
  });
});

it('has nothing to lean on when a weak vent rests on a remembered clause alone, and says so', () => {
  const answers = { ...hutRecord().answers, 'cell-vents': { kind: 'grade', grade: 'weak', evidence: 'seen' } as const };
  const vents = pick(hutSheet(hutRecord({ answers })), 'findings', 'finding').find(
    ({ itemId }) => itemId === 'cell-vents',
  );
  expect(vents?.basis).toBe('Basis: none that was opened, so none is printed.');
  expect(vents?.line).toContain('serious risk · severity I catastrophic · likelihood D remote');
});

describe('a stop sign', () => {
  const answers = { ...hutRecord().answers, swollen: { kind: 'grade', grade: 'failed', evidence: 'seen' } as const };
  const sheet = hutSheet(hutRecord({ answers }));

  it('withholds score, after-scores and ledger and says what to do; zones and findings stay', () => {
    expect(kinds(sheet, 'result')).toEqual(['verdict', 'zones']);
    expect(sectionOf(sheet, 'ledger')).toBeUndefined();
    expect(pick(sheet, 'findings', 'finding')).toHaveLength(3);
    expect(pick(sheet, 'remedies', 'figures')).toEqual([]);
    expect(pick(sheet, 'remedies', 'remedy').flatMap(({ gain, after }) => [gain, after])).not.toContain('+2.0');
    const [verdict] = pick(sheet, 'result', 'verdict');
    expect(verdict).toMatchObject({ stop: true, title: 'Stop: treat as damaged' });
    expect(verdict?.advice.join(' ')).toMatch(/call the fire service.*withheld/);
    expect(allText(sheet)).not.toMatch(/costs [\d.]+ points|14\.5/);
  });
});

describe('a stop sign not ruled out', () => {
  const { swollen: _, ...answers } = hutRecord().answers;
  const sheet = hutSheet(hutRecord({ answers }));

  it('is Unsettled, names both ends and still shows the range', () => {
    const [verdict] = pick(sheet, 'result', 'verdict');
    expect(verdict?.title).toBe('Unsettled');
    expect(verdict?.line).toContain('“Stop: treat as damaged” at worst, “Workshop first” at best');
    expect(verdict?.advice.join(' ')).toContain('A stop sign is not ruled out');
    expect(kinds(sheet, 'result')).toContain('rule');
  });
});

it('shows one figure, the nearest tenth, once everything is settled: 48.75 → 48.8, × 0.40 → 19.5', () => {
  const answers = { ...hutRecord().answers, 'case-lid': { kind: 'grade', grade: 'sound', evidence: 'seen' } as const };
  const sheet = hutSheet(hutRecord({ answers }));
  expect(pick(sheet, 'result', 'figures')[0]?.figures.map(({ value }) => plain(value))).toEqual([
    '48.8',
    '× 0.40',
    '19.5',
    '21.5',
    '93.8',
  ]);
  expect(pick(sheet, 'result', 'rule')[0]).toMatchObject({ settled: true, figures: '19.5' });
});

it('is headed “Short route: 5 of 7 asked” and leaves the other two out of every list', () => {
  const sheet = hutSheet(hutRecord({ route: 'short' }));
  expect(sheet.head.marks).toEqual(['not closed', 'invented demo', 'draft checklist', 'Short route: 5 of 7 asked']);
  expect(pick(sheet, 'answers', 'answers').flatMap(({ rows }) => rows.map(({ itemId }) => itemId))).toEqual([
    'case-lid',
    'metal-floor',
    'main-lug',
    'cell-vents',
    'swollen',
  ]);
  expect(allText(sheet)).toContain('2 items are not asked on this route.');
});

it('makes a sheet of an empty record: no name, no date, nothing promised, everything open', () => {
  const sheet = hutSheet({
    ...hutRecord(),
    demo: false,
    nameplate: {},
    answers: {},
    facts: {},
    makeSafe: [],
    states: {},
    state: null,
    afterwards: {},
    words: {},
    newestAt: null,
    sheetAt: null,
  });
  expect(sheet.head).toMatchObject({
    overline: 'Build-quality sheet',
    name: 'Pack without a name',
    line: '',
    marks: ['not closed', 'draft checklist'],
  });
  expect(pick(sheet, 'result', 'rule')[0]?.figures).toBe('0.0–100.0');
  expect(pick(sheet, 'open', 'list').map(({ items }) => items.length)).toEqual([7, 1]);
  expect(pick(sheet, 'promised', 'figures')[0]?.figures.map(({ value }) => value)).toEqual([
    'not stated',
    'not tested',
  ]);
});

describe('photos', () => {
  const record = hutRecord({
    photos: [
      hutPhoto(1, { zone: 'arrival', caption: 'As it came' }),
      hutPhoto(2, {
        itemIds: ['case-label', 'main-lug'],
        takenAt: '2026-11-24T14:02:33',
        callouts: [
          {
            id: '1',
            number: 2,
            photoId: 'x',
            kind: 'leader',
            points: [
              [0.5, 0.5],
              [0.7, 0.2],
            ],
            made: stampAt(2),
            itemId: 'main-lug',
          },
          {
            id: '2',
            number: 1,
            photoId: 'x',
            kind: 'leader',
            points: [
              [0.2, 0.5],
              [0.1, 0.2],
            ],
            made: stampAt(1),
            text: 'Bare strands',
          },
          {
            id: '3',
            number: null,
            photoId: 'x',
            kind: 'cover',
            points: [
              [0, 0],
              [0.1, 0.1],
            ],
            made: stampAt(3),
          },
        ],
      }),
      hutPhoto(3, { itemIds: ['tidy'] }),
    ],
  });
  const sheet = hutSheet(record);
  const findings = pick(sheet, 'findings', 'finding');

  it('stand once, under the worst finding they show; later findings name them by number', () => {
    expect(findings.map(({ photos }) => photos.map(({ number }) => number))).toEqual([[2], []]);
    expect(findings.map(({ evidence }) => evidence.includes('photo 2'))).toEqual([true, true]);
  });

  it('of sound items and of the closed pack stand in Further photos', () => {
    expect(pick(sheet, 'photos', 'photos')[0]?.photos.map(({ number, caption }) => [number, caption])).toEqual([
      [1, 'As it came'],
      [3, 'shows: Tidy runs'],
    ]);
  });

  it('carry number, zone, time and the legend of their leaders in number order', () => {
    expect(plain(findings[0]?.photos[0]?.title ?? '')).toBe('Photo 2 · Wiring · 24 November 2026, 14:02');
    expect(findings[0]?.photos[0]?.legend).toEqual([
      { number: 1, text: 'Bare strands' },
      { number: 2, text: 'Main lug' },
    ]);
  });
});

it('counts values that could not be read and names them', () => {
  const sheet = hutSheet(hutRecord({ setAside: [{ key: 'answer/tidy', reason: 'grade must be one of four' }] }));
  expect(allText(sheet)).toContain('One stored value could not be read and is left out of this sheet.');
  expect(allText(sheet)).toContain('grade must be one of four');
});

it('refuses a definition that is not the one the grading was made by', () => {
  const other = { ...HUT_CHECKLIST, zones: HUT_CHECKLIST.zones.map((zone) => ({ ...zone, id: `${zone.id}-x` })) };
  expect(() => hutSheet(hutRecord(), other)).toThrow();
});

it('is the same sheet twice', () => {
  expect(hutSheet()).toEqual(hutSheet());
});
