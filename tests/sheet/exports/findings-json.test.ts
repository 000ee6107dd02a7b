import { readFileSync, writeFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import { findingsFileSchema } from '../../../src/schema/findings-file.ts';
import { findingsFile, findingsJsonText } from '../../../src/sheet/exports/findings-json.ts';
import { liveFigures } from '../../../src/sheet/exports/live-figures.ts';
import type { SheetInput } from '../../../src/sheet/model/sheet-context.ts';
import { findingsJsonSchema } from '../../schema/findings-json-schema.ts';
import { CLOSED_ONCE, HASH_1 } from '../closed-pack.ts';
import { hutPhoto, hutRecord, NEWEST_MS, stampAt } from '../hut-pack.ts';
import { CALLED_OUT, DIPPER_INPUT, inputOf, ODD, WREN_INPUT } from './inputs.ts';

const PATH = 'public/findings.schema.json';
const published = JSON.parse(readFileSync(PATH, 'utf8'));
const validate = new Ajv2020({ strict: true, allErrors: true }).compile(published);
const read = (input: SheetInput): unknown => JSON.parse(findingsJsonText(input));
const complaints = (value: unknown) => (validate(value) ? [] : (validate.errors ?? []));

/** After a change in src/schema/findings-file.ts: UPDATE_SCHEMA=1 with this test writes the file anew, to be formatted. */
it('findings.schema.json is what src/schema gives today (UPDATE_SCHEMA=1 rewrites it)', () => {
  const today = findingsJsonSchema();
  if (process.env.UPDATE_SCHEMA === '1') writeFileSync(PATH, today);
  expect(JSON.parse(readFileSync(PATH, 'utf8'))).toEqual(JSON.parse(today));
});

describe('the published schema', () => {
  it('is JSON Schema 2020-12, asks for all 24 members and takes no other', () => {
    expect(published.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    // By hand: $schema, format, formatVersion, madeWith, disclosure, caution, sheet, pack, route, 3 counts, verdict,
    // stop, settled, settledShareFrac, score, build, factor, after, zones, findings, photos, liveTests.
    expect(published.required).toHaveLength(24);
    expect(published.additionalProperties).toBe(false);
  });

  it.each(Object.entries(ODD))('another program finds no fault in the file of %s', (_, input) => {
    expect(complaints(read(input))).toEqual([]);
    expect(v.is(findingsFileSchema, read(input))).toBe(true);
  });

  it('refuses a file without its disclosure, one with a score of text, and one with a member more', () => {
    const whole = findingsFile(WREN_INPUT);
    const { disclosure: _, ...undisclosed } = whole;
    expect(complaints(undisclosed).map(({ keyword }) => keyword)).toEqual(['required']);
    expect(complaints({ ...whole, score: '83' })).not.toEqual([]);
    expect(complaints({ ...whole, rating: 5 }).map(({ keyword }) => keyword)).toEqual(['additionalProperties']);
  });
});

describe('the findings as JSON', () => {
  it('gives score, Build and factor of Wren at full precision, both ends', () => {
    const { score, build, factor } = findingsFile(WREN_INPUT);
    expect({ score, build, factor }).toEqual({
      score: WREN_INPUT.grading.score,
      build: WREN_INPUT.grading.build,
      factor: WREN_INPUT.grading.factor,
    });
    expect(read(WREN_INPUT)).toEqual(findingsFile(WREN_INPUT));
  });

  it('withholds score, Build, factor, after-scores and points where a stop sign was found', () => {
    const file = findingsFile(ODD['a stop sign found'] as SheetInput);
    expect(file).toMatchObject({ stop: 'failed', score: null, build: null, factor: null });
    expect(file.after).toEqual({ outside: null, workshop: null });
    expect(file.findings.map(({ lostPoints }) => lostPoints)).toEqual(file.findings.map(() => null));
    expect(file.findings.map(({ itemId }) => itemId)).toContain('swollen');
  });

  it('has no score and no factor where nothing can apply', () => {
    const file = findingsFile(ODD['nothing that can apply'] as SheetInput);
    expect(file).toMatchObject({ score: null, build: null, factor: null, findings: [] });
  });

  it('ties the lug to photos 1 and 2 by number and SHA-256, and leaves the cover-up out of 4 callouts', () => {
    const file = findingsFile(inputOf(hutRecord({ photos: CALLED_OUT })));
    expect(file.findings[0]?.photos).toEqual([
      { number: 1, sha256: hutPhoto(1).id },
      { number: 2, sha256: hutPhoto(2).id },
    ]);
    expect(file.photos.map(({ callouts }) => callouts.map(({ kind }) => kind))).toEqual([
      ['leader', 'outline'],
      ['stroke'],
    ]);
    expect(JSON.stringify(file)).not.toContain('a face');
  });

  it('says which sheet it is: open without a hash, closed with revision 1 and its SHA-256', () => {
    expect(findingsFile(inputOf(hutRecord())).sheet).toEqual({
      standing: 'open',
      revision: null,
      sha256: null,
      date: '2026-11-25',
    });
    expect(findingsFile(inputOf(hutRecord(CLOSED_ONCE))).sheet).toMatchObject({
      standing: 'closed',
      revision: 1,
      sha256: HASH_1,
    });
  });

  it('discloses an invented pack, how it came and who pays', () => {
    expect(findingsFile(inputOf(hutRecord())).disclosure).toEqual({
      obtained: 'bought from a shop',
      commission: 'No link of the tester’s pays a commission.',
      invented: true,
      line: 'Invented demo: no such pack exists. Sample bought from a shop. No link of the tester’s pays a commission.',
    });
    expect(findingsFile(ODD['nothing answered'] as SheetInput).disclosure).toMatchObject({
      commission: null,
      invented: false,
    });
  });

  it('gives delivered, cost, over-current and cut-offs of the invented packs, and null of a pack not tested', () => {
    const { liveTests } = findingsFile(DIPPER_INPUT);
    expect(liveTests.delivered?.chargeAh).toBeGreaterThan(0);
    expect(liveTests.runCount).toBe(DIPPER_INPUT.record.tests.runs.length);
    expect(liveTests.overcurrent?.tripCount).toBe(DIPPER_INPUT.record.tests.trips.length);
    expect(liveTests.cutOffs).toHaveLength(DIPPER_INPUT.record.tests.cutOffs.length);
    expect(liveTests.refused).toEqual([]);
    expect(findingsFile(inputOf(hutRecord())).liveTests).toEqual({
      promised: { capacityAh: 100, energyWh: 2560, energyFrom: 'computed' },
      delivered: null,
      runCount: 0,
      completeRunCount: 0,
      cost: null,
      retention: null,
      peukertExponent: null,
      overcurrent: null,
      cutOffs: [],
      cellSets: [],
      refused: [],
    });
  });

  it('gives null, never 0 and never an empty list, for what a calculation refuses, and names 5 matters', () => {
    const { nameplate } = hutRecord();
    const named = (id: string) => ({ id, made: stampAt(NEWEST_MS) });
    const beyond = Number.POSITIVE_INFINITY;
    const liveTests = liveFigures({
      nameplate: { ...nameplate, ratedCapacityAh: -1, continuousCurrentA: -1 },
      tests: {
        ...NO_LIVE_TESTS,
        runs: [{ ...named('r'), currentA: 20, chargeAh: 50 }],
        trips: [{ ...named('t'), currentA: 150, heldForS: 2, opened: true }],
        cutOffs: [{ ...named('c'), kind: 'coldCharge', acted: true, sensorDegC: beyond }],
        cellSets: [
          {
            ...named('s'),
            state: 'rested',
            cells: [
              { number: 1, voltageV: beyond },
              { number: 2, voltageV: 3.3 },
            ],
          },
        ],
      },
    });
    expect(liveTests).toMatchObject({
      promised: null,
      delivered: null,
      runCount: 1,
      completeRunCount: null,
      overcurrent: null,
      cutOffs: null,
      cellSets: null,
    });
    expect(liveTests.refused.map((reason) => reason.split(':')[0])).toEqual([
      'capacity',
      'overcurrent',
      'cutOffs',
      'cellSets',
      'promised',
    ]);
    expect(complaints({ ...findingsFile(inputOf(hutRecord())), liveTests })).toEqual([]);
  });
});
