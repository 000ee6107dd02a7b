import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liftEntry, OUR_LADDER } from '../../../src/migrations/lift-entry.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import { SCHEMA_VERSION } from '../../../src/schema/schema-version.ts';
import { MAX_SEALED_BYTES, type SealedSheet } from '../../../src/schema/sealed-sheet.ts';
import { isSame } from '../../../src/sheet/model/sealed/compare-figures.ts';
import { type Rechecked, recheck } from '../../../src/sheet/model/sealed/recheck.ts';
import { type SealInput, sealedText } from '../../../src/sheet/model/sealed/sealed-text.ts';
import { sceneArb } from '../../grading/arbitrary-record.ts';
import { type DrawnTest, nameplateArb, testsArb } from '../../grading/live-tests/arbitrary-live-tests.ts';
import { test as liveTest, member } from '../../grading/live-tests/tested-pack.ts';
import { entry as madeEntry } from '../../record/made-entries.ts';
import { stampAt } from '../hut-pack.ts';
import { DIPPER_SEAL, WREN_SEAL } from './demo-records.ts';
import { HUT_SEAL, withValue } from './hut-seal.ts';

const HUT = sealedText(HUT_SEAL);
const lift = (entry: Entry, from: number) => liftEntry(entry, from, OUR_LADDER);

/** The sealed JSON with something done to it, as an editor would write it. */
function edited(change: (sealed: SealedSheet) => void, text = HUT): string {
  const sealed = JSON.parse(text) as SealedSheet;
  change(sealed);
  return JSON.stringify(sealed);
}

function rechecked(text: string): Rechecked {
  const result = recheck(text, lift);
  if (result.outcome !== 'rechecked') throw new Error(`refused: ${JSON.stringify(result)}`);
  return result;
}

function linesOf({ differences, missing, extra }: Rechecked): string[] {
  return [...differences, ...missing, ...extra].map(({ path }) => path);
}

const setFigure = (path: string, value: number | string) =>
  edited(({ figures }) => Object.assign(figures, { [path]: value }));
const figureAt = (path: string) => (JSON.parse(HUT) as SealedSheet).figures[path];

describe('a sealed sheet as it was sealed', () => {
  it.each([
    ['the hut pack', HUT_SEAL],
    ['Wren 24', WREN_SEAL],
    ['Dipper 24', DIPPER_SEAL],
  ])('%s comes out the same in every line, to the byte', (_, seal) => {
    const text = sealedText(seal);
    const result = rechecked(text);
    expect(linesOf(result)).toEqual([]);
    expect(result.same).toBe(Object.keys((JSON.parse(text) as SealedSheet).figures).length);
    expect(result).toMatchObject({ canonical: true, canonicalText: text });
  });

  it('says what it is of: Wren 24, sample 1, revision 1, hut 0.3.0, made by 0.1.0', () => {
    expect(rechecked(HUT).info).toMatchObject({
      packName: 'Wren 24',
      sample: '1',
      demo: true,
      revision: 1,
      reason: null,
      after: null,
      appVersion: '0.1.0',
      schemaVersion: SCHEMA_VERSION,
      checklist: { id: 'hut', version: '0.3.0', sha256: 'c'.repeat(64), title: 'Hut packs' },
    });
  });

  it.each([
    ['laid out anew', JSON.stringify(JSON.parse(HUT), null, 2)],
    ['with other line ends and a byte order mark', `\ufeff${JSON.stringify(JSON.parse(HUT), null, '\t').replaceAll('\n', '\r\n')}`], // biome-ignore format: one line
    ['with one space behind it', `${HUT} `],
    [
      'with numbers written otherwise: 640.0 and 6.4e2',
      HUT.replace('"v":640', '"v":640.0').replace('"v":640.0', '"v":6.4e2'),
    ],
    ['with letters written by number', HUT.replace('"Wren 24"', '"\\u0057ren 24"')],
  ])('is the same content but other bytes when %s', (_, text) => {
    const result = rechecked(text);
    expect(linesOf(result)).toEqual([]);
    expect(result).toMatchObject({ canonical: false, canonicalText: HUT });
  });
});

describe('a changed figure', () => {
  it('is named, and it alone: Zone Vents, build low, 0.875 sealed as 0.9', () => {
    const result = rechecked(setFigure('grading/zones/vents/q/low', 0.9));
    expect(result.differences).toEqual([
      { path: 'grading/zones/vents/q/low', words: 'Zone Vents, build low', sealed: '0.9', recomputed: '0.875' },
    ]);
    expect([result.missing, result.extra]).toEqual([[], []]);
  });

  it.each([
    [2e-9, 1],
    [-2e-9, 1],
    [5e-10, 0],
    [-5e-10, 0],
  ])('off by %f of itself gives %i line', (off, count) => {
    const build = figureAt('grading/build/low') as number;
    expect(linesOf(rechecked(setFigure('grading/build/low', build * (1 + off))))).toHaveLength(count);
  });

  it('shows as many digits as tell the two apart: 36.2500000 and 36.2500001', () => {
    const [line] = rechecked(setFigure('grading/build/low', 36.25 * (1 + 3e-9))).differences;
    expect(line).toMatchObject({ sealed: '36.2500001', recomputed: '36.2500000', words: 'Build low' });
  });

  it('that is a word is named in words', () => {
    const [line] = rechecked(setFigure('grading/verdict/high', 'noFinding')).differences;
    expect(line).toMatchObject({ words: 'Verdict high', sealed: 'No finding on this sample' });
    const items = rechecked(setFigure('grading/items/main-lug/grade', 'sound')).differences;
    expect(items).toEqual([
      { path: 'grading/items/main-lug/grade', words: 'Item Main lug, grade', sealed: 'sound', recomputed: 'failed' },
    ]);
  });

  it('that was taken out is missing, one put in is extra', () => {
    const without = rechecked(
      edited(({ figures }) => Reflect.deleteProperty(figures, 'grading/findings/main-lug/risk')),
    );
    expect(without.missing).toEqual([
      { path: 'grading/findings/main-lug/risk', words: 'Finding Main lug, risk', sealed: null, recomputed: 'high' },
    ]);
    const more = rechecked(setFigure('grading/zones/vents/praise', 'lovely'));
    expect(more.extra).toEqual([
      { path: 'grading/zones/vents/praise', words: 'Zone Vents, praise', sealed: 'lovely', recomputed: null },
    ]);
  });

  it('of a run is named by the run: Capacity, Run 1 …', () => {
    const sealed = JSON.parse(sealedText(WREN_SEAL)) as SealedSheet;
    const path = Object.keys(sealed.figures).find((one) => /^tests\/capacity\/runs\/.*\/energyWh$/.test(one)) ?? '';
    const result = rechecked(edited(({ figures }) => Object.assign(figures, { [path]: 1 }), JSON.stringify(sealed)));
    expect(result.differences.map(({ words }) => words)).toEqual([
      expect.stringMatching(/^Capacity, Run\u00a01 · .*, energy \(Wh\)$/),
    ]);
  });
});

describe('a changed answer', () => {
  const answer = (sealed: SealedSheet, itemId: string) =>
    sealed.entries.find(({ key }) => key[1] === 'answer' && key[2] === itemId)?.v as { grade: string };

  it('of the lug, failed to sound, moves its item, its zone, Build, factor, score, verdict, finding and ledger', () => {
    const result = rechecked(edited((sealed) => Object.assign(answer(sealed, 'main-lug'), { grade: 'sound' })));
    const words = [...result.differences, ...result.extra, ...result.missing].map((line) => line.words);
    for (const named of ['Item Main lug, grade', 'Zone Wiring, build low', 'Build low', 'Factor low', 'Score low', 'Verdict low', 'Finding Main lug, risk', 'Ledger, line Main lug, lost points']) // biome-ignore format: one line
      expect(words).toContain(named);
    expect(words.filter((one) => one.includes('Zone Vents'))).toEqual([]);
  });

  it('under a stamp alone changes no figure, but the bytes are others', () => {
    const result = rechecked(edited(({ entries }) => Object.assign(entries[3] ?? {}, { at: stampAt(1) })));
    expect(linesOf(result)).toEqual([]);
    expect(result.canonicalText).not.toBe(HUT);
  });
});

describe('another definition', () => {
  it('with another weight moves lines and is no longer the text that was sealed', () => {
    const result = rechecked(edited(({ definition }) => Object.assign(definition.zones[2] ?? {}, { weight: 9 })));
    expect(linesOf(result)).toContain('grading/build/low');
    expect(result.info.checklist.definitionText).not.toBe(rechecked(HUT).info.checklist.definitionText);
  });
});

describe('what is refused, with the part, the place and the reason', () => {
  it.each([
    ['no JSON', 'Wren 24', { outcome: 'damaged', part: 'json' }],
    ['a file cut short', HUT.slice(0, 5000), { outcome: 'damaged', part: 'json' }],
    ['nothing', '', { outcome: 'damaged', part: 'json' }],
    ['another JSON', '{"format":"gpx"}', { outcome: 'notOurs' }],
    ['a list', '[1]', { outcome: 'notOurs' }],
    ['null', 'null', { outcome: 'notOurs' }],
    [
      'a newer schema, whatever else is in it',
      `{"format":"underlid-sealed-sheet","schemaVersion":${SCHEMA_VERSION + 1}}`,
      { outcome: 'newer' },
    ],
    [
      'a field that no recheck covers',
      edited((it) => Object.assign(it, { seal: 'gold' })),
      { outcome: 'damaged', part: 'shape', place: 'seal' },
    ],
    [
      'no figures',
      edited((it) => Reflect.deleteProperty(it, 'figures')),
      { outcome: 'damaged', part: 'shape', place: 'figures' },
    ],
    [
      'a prototype key',
      HUT.replace('"figures":{', '"figures":{"__proto__":1,'),
      { outcome: 'damaged', part: 'shape', reason: 'holds the forbidden key "__proto__"' },
    ],
    [
      'a name twice, of which some readers take the first and some the last: another score before the sealed one',
      HUT.replace('"figures":{', '"figures":{"grading/score/low":99,'),
      { outcome: 'damaged', part: 'shape', reason: 'a name stands twice in one of its objects' },
    ],
    [
      'half a character',
      HUT.replace('"reason":"Behind potting"', '"reason":"\\ud83d"'),
      { outcome: 'damaged', part: 'shape' },
    ],
    [
      'a credit that rises',
      edited((it) => Object.assign(it.definition.credits, { failed: 0.9 })),
      { outcome: 'damaged', part: 'definition' },
    ],
    [
      'a definition of another name',
      edited((it) => Object.assign(it.definition, { id: 'barn' })),
      { outcome: 'damaged', part: 'definition' },
    ],
    [
      'a definition the entries do not name',
      edited((it) => Object.assign(it.checklist, { sha256: '0'.repeat(64) })),
      { outcome: 'damaged', part: 'definition' },
    ],
    [
      'an answer of no known kind',
      edited((it) => Object.assign(it.entries[0] ?? {}, { v: { kind: 'guess' } })),
      { outcome: 'damaged', part: 'entries', place: `${'a'.repeat(32)}/answer/case-label` },
    ],
    [
      'an entry without a key',
      edited((it) => Object.assign(it.entries, { 2: 7 })),
      { outcome: 'damaged', part: 'entries', place: 'entry 3' },
    ],
    [
      'an entry twice',
      edited((it) => it.entries.splice(1, 0, it.entries[0] as Entry)),
      { outcome: 'damaged', part: 'entries', reason: 'it is out of order, or there twice' },
    ],
    ['entries out of order', edited((it) => it.entries.reverse()), { outcome: 'damaged', part: 'entries' }],
    [
      'an entry of another pack',
      edited((it) => Object.assign(it.entries.at(-1)?.key ?? [], { 0: 'b'.repeat(32) })),
      { outcome: 'damaged', part: 'entries' },
    ],
    [
      'a closing',
      edited((it) =>
        it.entries.push({
          key: ['a'.repeat(32), 'reopening', 'b'.repeat(32)],
          v: { after: 'c'.repeat(64), reason: 'why', openedAtMs: 1 },
          at: stampAt(1),
          by: 'd'.repeat(32),
        }),
      ),
      { outcome: 'damaged', part: 'entries', reason: 'it speaks of a sheet as closed' },
    ],
    [
      'an endless number',
      HUT.replace('"price","', '"price","').replace('"v":640', '"v":1e999'),
      { outcome: 'damaged', part: 'shape' },
    ],
    ['a file too large', `${HUT}${' '.repeat(MAX_SEALED_BYTES)}`, { outcome: 'tooLarge' }],
  ])('%s', (_, text, refusal) => {
    // biome-ignore format: a table
    expect(recheck(text, lift)).toMatchObject(refusal);
  });

  it('a step of migration that fails, with the entry it failed on', () => {
    const failing = () => ({ ok: false as const, problem: 'failed' as const, detail: 'step 3 threw' });
    expect(recheck(HUT, failing)).toMatchObject({ outcome: 'damaged', part: 'entries', reason: 'step 3 threw' });
  });
});

it('lifts the entries of an older schema before it reads them', () => {
  const old = edited((sealed) => {
    sealed.schemaVersion = SCHEMA_VERSION - 1;
    for (const { key, v } of sealed.entries) if (key[2] === 'swollen') Object.assign(v as object, { grade: 'flat' });
  });
  const mend = (entry: Entry, from: number) => {
    expect(from).toBe(SCHEMA_VERSION - 1);
    const v = entry.key[2] === 'swollen' ? { ...(entry.v as object), grade: 'sound' } : entry.v;
    return { ok: true as const, entry: { ...entry, v } };
  };
  const result = recheck(old, mend);
  expect(result).toMatchObject({ outcome: 'rechecked', differences: [], missing: [], extra: [] });
});

it('shows no character that turns the words around it: 0 of U+202E in what it says', () => {
  const named = withValue(HUT_SEAL, ['nameplate', 'name'], 'Wren \u202e42');
  expect(rechecked(sealedText(named)).info.packName).toBe('Wren 42');
});

it.each([
  [0, 1e-13, true],
  [0, 1e-11, false],
  [1e9, 1e9 + 0.5, true],
  [1e9, 1e9 + 2, false],
  [1, '1', false],
  [null, 0, false],
  ['weak', 'weak', true],
])('takes %s and %s for the same: %s', (one, other, same) => {
  expect(isSame(one, other)).toBe(same);
});

it('comes out the same for any definition and any record of it, and names each line that is set off', () => {
  fc.assert(
    fc.property(sceneArb, fc.nat(), ({ definition, record }, draw) => {
      const seal = sealOf(definition, record);
      const text = sealedText(seal);
      const result = rechecked(text);
      expect(linesOf(result)).toEqual([]);
      expect(result.canonical).toBe(true);

      const { figures } = JSON.parse(text) as SealedSheet;
      const numbers = Object.keys(figures).filter((path) => typeof figures[path] === 'number');
      const path = numbers[draw % numbers.length] ?? '';
      const off = edited((sealed) => Object.assign(sealed.figures, { [path]: Number(figures[path]) * 1.01 + 1 }), text);
      expect(linesOf(rechecked(off))).toEqual([path]);
    }),
    { numRuns: 100, seed: 4 },
  );
});

function sealOf(
  definition: SealInput['definition'],
  record: { answers: object; facts: object; route: string },
): SealInput {
  const checklist = { id: definition.id, version: definition.version, sha256: '7'.repeat(64) };
  const values: [string, string, unknown][] = [
    ['pack', 'made', {}],
    ['pack', 'checklist', checklist],
    ['pack', 'route', record.route],
    ...Object.entries(record.answers).map(([part, v]): [string, string, unknown] => ['answer', part, v]),
    ...Object.entries(record.facts).map(([part, choice]): [string, string, unknown] => ['fact', part, { choice }]),
  ];
  const entries = values.map(
    ([subject, part, v]): Entry => ({ key: [HUT_SEAL.packId, subject, part], v, at: stampAt(5), by: 'd'.repeat(32) }),
  );
  return { ...HUT_SEAL, definition, entries };
}

it('comes out the same for any nameplate and any live tests that the schema admits, JSON and all', () => {
  let testLines = 0;
  fc.assert(
    fc.property(nameplateArb, testsArb, (nameplate, drawn) => {
      const claims = Object.entries(nameplate).map(([field, value]) => madeEntry('nameplate', field, value));
      const bare = HUT_SEAL.entries.filter(({ key }) => key[1] !== 'nameplate');
      const text = sealedText({ ...HUT_SEAL, entries: [...bare, ...claims, ...drawn.flatMap(entriesOfTest)] });
      const result = rechecked(text);
      expect(linesOf(result)).toEqual([]);
      expect(result.canonical).toBe(true);
      testLines += Object.keys((JSON.parse(text) as SealedSheet).figures).filter((path) =>
        path.startsWith('tests/'),
      ).length;
    }),
    { numRuns: 150, seed: 4 },
  );
  expect(testLines).toBeGreaterThan(10_000);
});

function entriesOfTest({ subject, value, members = [] }: DrawnTest, place: number): Entry[] {
  const of = subject === 'cellSet' ? 'cell' : 'parallelShare';
  const readings = members.map((given, at) => member(of, place + 1, { ...given, number: at + 1 }));
  return [liveTest(subject, place + 1, value), ...readings];
}
