import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askNext } from '../../src/app/ask-next.ts';
import { zoneRead } from '../../src/app/live-tests/zone-read.ts';
import { questionsOf } from '../../src/app/questions.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { lookHereNext } from '../../src/grading/look-here-next.ts';
import { lostOnLeaving } from '../../src/grading/lost-on-leaving.ts';
import { restIsSound } from '../../src/grading/rest-is-sound.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { GRADES, type Grade } from '../../src/schema/grade.ts';
import { LID_OFF_STATES, PACK_STATES } from '../../src/schema/pack-states.ts';
import { figuresOf } from '../../src/sheet/model/sealed/figures-of.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { graded } from '../grading/answer-with.ts';
import { recordArb } from '../grading/arbitrary-record.ts';
import { cellSet, testsOf } from '../grading/derive/tests-of.ts';
import { hutRecord, hutSheet } from '../sheet/hut-pack.ts';
import { FONTS, noPhotos } from '../sheet/pdf-inputs.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { admittedFile } from './admitted-file.ts';
import { builtIn } from './built-in.ts';
import { stringsIn } from './strings-in.ts';

/** The engine from end to end on a checklist with other zones, hazards, facts and items than the one it grew up with. */
const rack = admittedFile('lfp-rack/0.1.0');

/** Every fact yes, so that every item applies; every item sound but for the grades given. */
function rackRecord(grades: Readonly<Record<string, Grade>> = {}, given: Partial<PackRecord> = {}): PackRecord {
  return hutRecord({
    checklist: { id: rack.id, version: rack.version, sha256: 'd'.repeat(64) },
    nameplate: { name: 'Heron 48', cellsInSeries: 16, nominalVoltageV: 51.2, ratedCapacityAh: 100 },
    facts: Object.fromEntries(rack.facts.map(({ id }) => [id, 'yes'])),
    answers: Object.fromEntries(rack.items.map(({ id }) => [id, graded(grades[id] ?? 'sound', 'measured')])),
    states: {},
    ...given,
  });
}
const BLANK = rackRecord({}, { answers: {}, facts: {} });

describe('grading', () => {
  it('a pack sound throughout scores 100 at the factor 1, with no finding', () => {
    const grading = gradeRecord(rack, rackRecord());
    expect(grading.score?.low).toBeCloseTo(100, 9);
    expect(grading.factor).toEqual({ low: 1, high: 1 });
    expect(grading.verdict).toEqual({ low: 'noFinding', high: 'noFinding', settled: true });
  });

  /**
   * By hand, DESIGN §5: shrouds failed is 3 of the 8 of a zone that weighs 12 of 100, so Build = 100 · (1 − 0.12 · 3/8) =
   * 95.5; severity II × C occasional is serious (MIL-STD-882E Table III), k 0.70, so 66.85. A cap leaves it passable at
   * credit 0.75 and no risk: 100 · (1 − 0.12 · 3/8 · 0.25) = 98.875.
   */
  it('bare terminals: Build 95.5, Score 66.85, and 98.875 once they are shrouded from outside', () => {
    const grading = gradeRecord(rack, rackRecord({ 'terminal-shrouds': 'failed' }));
    expect(grading.build?.low).toBeCloseTo(95.5, 9);
    expect(grading.score?.low).toBeCloseTo(66.85, 9);
    expect(grading.after.outside?.low).toBeCloseTo(98.875, 9);
    expect(grading.verdict.low).toBe('notAsItComes');
    expect(grading.remedies.map(({ remedyId }) => remedyId)).toEqual(['shroud-terminals']);
    expect(grading.findings.map(({ itemId, risk }) => `${itemId} ${risk}`)).toEqual(['terminal-shrouds serious']);
  });

  it.each(
    rack.items.flatMap((item) =>
      GRADES.filter((grade) => item.grades[grade]).map((grade) => [item.id, grade] as const),
    ),
  )('%s %s: one finding or none, a ledger that sums to 100 − Score', (itemId, grade) => {
    const grading = gradeRecord(rack, rackRecord({ [itemId]: grade }));
    const isFinding = grade === 'weak' || grade === 'failed';
    expect(grading.findings.map((finding) => finding.itemId)).toEqual(isFinding ? [itemId] : []);
    const stops = rack.items.some(({ id, stop }) => id === itemId && stop && grade === 'failed');
    expect(grading.stop).toBe(stops ? 'failed' : 'none');
    if (stops) return expect(grading.score).toBeNull();
    const { lines = [], factors = [] } = grading.ledger ?? {};
    const lost = [...lines, ...factors].reduce((sum, { lostPoints }) => sum + lostPoints, 0);
    expect(lost).toBeCloseTo(100 - (grading.score?.low ?? Number.NaN), 9);
  });

  it('reads what is typed: 0.3 Ω of the earth bond is passable, 52.4 V and 51.8 V to the chassis are failed', () => {
    const typed = (values: Record<string, number>): Answer => ({ kind: 'readings', values, evidence: 'measured' });
    const { items } = gradeRecord(rack, {
      ...BLANK,
      answers: { 'earth-bond': typed({ bond: 0.3 }), 'chassis-isolation': typed({ across: 52.4, chassis: 51.8 }) },
    });
    const gradeOf = (id: string) => items.find(({ itemId }) => itemId === id)?.grade;
    expect([gradeOf('earth-bond'), gradeOf('chassis-isolation')]).toEqual(['passable', 'failed']);
  });

  it('derives from live tests: one of 16 cells at 1.9 V stops the job, and the score is withheld', () => {
    const cells = [...Array(15).fill(3.28), 1.9];
    const grading = gradeRecord(rack, { ...BLANK, tests: testsOf({ cellSets: [cellSet('rested', cells)] }) });
    expect(grading.verdict.low).toBe('stop');
    expect(grading.score).toBeNull();
  });

  it('300 arbitrary records: 0 ≤ low ≤ high ≤ 100, a sheet of each, a next question exactly while one is open', () => {
    fc.assert(
      fc.property(recordArb(rack), (drawn) => {
        const record = rackRecord({}, drawn);
        const grading = gradeRecord(rack, record);
        if (grading.score !== null) {
          expect(grading.score.low).toBeGreaterThanOrEqual(0);
          expect(grading.score.high).toBeGreaterThanOrEqual(grading.score.low);
          expect(grading.score.high).toBeLessThanOrEqual(100 + 1e-9);
        }
        if (grading.stop !== 'failed') expect(lookHereNext(rack, record) === null).toBe(grading.settled);
        expect(hutSheet(record, rack).sections.length).toBeGreaterThan(5);
        expect(Object.keys(figuresOf({ definition: rack, earlier: null, record })).length).toBeGreaterThan(100);
      }),
      { numRuns: 300 },
    );
  });
});

describe('the way through the pack', () => {
  it('asks all 25 items and 3 facts, each in one of the 5 states, and in Lid off each under one of the 7 zones', () => {
    const asking = { definition: rack, record: BLANK, grading: gradeRecord(rack, BLANK) };
    const all = PACK_STATES.flatMap((state) => questionsOf(asking, state));
    expect(all).toHaveLength(28);
    const lidOff = LID_OFF_STATES.flatMap((state) => questionsOf(asking, state));
    const byZone = LID_OFF_STATES.flatMap((state) => rack.zones.flatMap(({ id }) => questionsOf(asking, state, id)));
    expect(byZone).toHaveLength(lidOff.length);
  });

  it('answering what is looked at next, one by one, comes to an end with every Lid off item answered', () => {
    let record = BLANK;
    let asked = 0;
    for (const state of LID_OFF_STATES) {
      for (;;) {
        const next = askNext({ definition: rack, record, grading: gradeRecord(rack, record) }, state);
        if (next === null) break;
        asked += 1;
        const { question } = next;
        record =
          question.kind === 'fact'
            ? { ...record, facts: { ...record.facts, [question.fact.id]: 'yes' } }
            : { ...record, answers: { ...record.answers, [question.item.id]: graded('sound', 'measured') } };
      }
    }
    const inLidOff = rack.items.filter(({ state }) => state !== 'arrival' && state !== 'loaded').length;
    expect(asked).toBe(inLidOff + 1);
  });

  it('leaving it untouched loses 2 of its items; the rest of the bus bars that may be called sound is 1', () => {
    const lost = lostOnLeaving(rack, BLANK, { state: 'untouched', photoItemIds: new Set() });
    expect(lost.map(({ itemId }) => itemId)).toEqual(['bus-bar-cover', 'cell-vents']);
    // Of its 4, one is for safety, one is measured and one belongs to no look: the fact.
    expect(restIsSound(rack, BLANK, { zoneId: 'bus-bars', state: 'untouched' })).toEqual(['bus-bar-cover']);
  });

  it('a photo of a lead or of a cell goes where the checklist reads such tests: wiring and cells, here arrival and cells', () => {
    const zonesOf = (definition: typeof rack) => [
      zoneRead(definition, ['mainLeads']),
      zoneRead(definition, ['lowestCell', 'cellVoltages']),
    ];
    expect(zonesOf(builtIn)).toEqual(['wiring', 'cells']);
    expect(zonesOf(rack)).toEqual(['arrival', 'cells']);
  });
});

describe('sheet and PDF', () => {
  const record = rackRecord({ 'terminal-shrouds': 'failed', 'bus-bar-cover': 'weak', 'main-lugs': 'failed' });
  const sheet = hutSheet(record, rack);

  it('name all 7 zones, the 3 findings, their remedies and the draft', () => {
    const said = stringsIn(sheet);
    for (const { title } of rack.zones) expect(said).toContain(title);
    for (const title of ['Shrouds of the terminals', 'Cover of the bus bars', 'Main lugs']) {
      expect(said.some((text) => text.includes(title))).toBe(true);
    }
    expect(sheet.head.marks).toContain('draft checklist');
    expect(said.some((text) => text.includes('Put a shroud or boot over every power terminal'))).toBe(true);
  });

  it('never print a clause known only from memory as the basis of a fault: 0 times IEC 60950-1', () => {
    const bad = stringsIn(
      hutSheet(rackRecord({ 'earth-bond': 'failed' }), rack).sections.find(({ id }) => id === 'findings'),
    );
    expect(bad.join('\n')).toContain('Earth bond');
    expect(bad.join('\n')).not.toMatch(/60950/);
  });

  it('the PDF says score, findings and checklist', async () => {
    const { text } = await readPdf(await writePdf({ sheet, paper: 'a4', photos: noPhotos, fonts: FONTS }));
    for (const said of ['Heron 48', 'lfp-rack 0.1.0', 'Shrouds of the terminals', 'Gas and air', 'draft checklist']) {
      expect(text).toContain(said);
    }
  });
});
