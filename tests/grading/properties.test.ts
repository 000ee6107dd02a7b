import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Grading, Range } from '../../src/grading/grading.ts';
import { lookHereNext } from '../../src/grading/look-here-next.ts';
import { type Checklist, RISK_LEVELS } from '../../src/schema/checklist.ts';
import { GRADES, type Grade, gradeRank } from '../../src/schema/grade.ts';
import { VERDICTS } from '../../src/schema/verdict.ts';
import { after, type GradedRecord, sceneArb, walkArb } from './arbitrary-record.ts';
import { deepFreeze } from './deep-freeze.ts';
import { plainScore } from './plain-score.ts';

/** DESIGN §5, "Properties": each holds for any definition that checkDefinition admits. */
const RUNS = { numRuns: 5000 };
/** Room for rounding in sums of terms near 100. */
const EPS = 1e-9;

describe('for any definition and record', () => {
  it('never scores higher, at either end, after a grade is worsened with the facts held', () => {
    fc.assert(
      fc.property(sceneArb, fc.nat(), ({ definition, record }, draw) => {
        const worsenings = worseningsOf(definition, record);
        const worse = worsenings[draw % Math.max(1, worsenings.length)];
        fc.pre(worse !== undefined);
        const before = gradeRecord(definition, record);
        const worsened = gradeRecord(definition, deepFreeze(worse));
        expect(orWithheld(worsened.score).low).toBeLessThanOrEqual(orWithheld(before.score).low + EPS);
        expect(orWithheld(worsened.score).high).toBeLessThanOrEqual(orWithheld(before.score).high + EPS);
        expect(rankOf(worsened.verdict.low)).toBeLessThanOrEqual(rankOf(before.verdict.low));
        expect(rankOf(worsened.verdict.high)).toBeLessThanOrEqual(rankOf(before.verdict.high));
      }),
      RUNS,
    );
  });

  it('never widens the range, nor lets the final score or verdict out of an earlier one, as answers come in', () => {
    fc.assert(
      fc.property(walkArb, ({ definition, route, steps }) => {
        const gradings = gradingsAlong(definition, { answers: {}, facts: {}, route }, steps);
        for (const [place, later] of gradings.slice(1).entries()) {
          const earlier = gradings[place];
          if (earlier === undefined) throw new Error('a walk has no gaps');
          expectInside(later, earlier);
        }
        const last = gradings.at(-1);
        if (last === undefined) throw new Error('a walk has at least its start');
        expect(last.settled).toBe(true);
        expect(last.score?.low).toBe(last.score?.high);
        for (const earlier of gradings) expectInside(last, earlier);
      }),
      RUNS,
    );
  });

  it('grades a settled record as a plain sum over its items does', () => {
    fc.assert(
      fc.property(walkArb, ({ definition, route, steps }) => {
        const record = steps.reduce<GradedRecord>(after, { answers: {}, facts: {}, route });
        const grading = gradeRecord(definition, deepFreeze(record));
        const plain = plainScore(definition, record);
        expect(grading.build?.low).toBeCloseTo(plain.build, 9);
        expect(grading.factor.low).toBeCloseTo(plain.factor, 9);
        if (grading.stop === 'failed') expect(grading.score).toBeNull();
        else expect(grading.score?.high).toBeCloseTo(plain.build * plain.factor, 9);
      }),
      RUNS,
    );
  });

  it('gives the same result whatever the order of the answers', () => {
    fc.assert(
      fc.property(walkArb, fc.nat(), ({ definition, route, steps }, draw) => {
        const some = steps.slice(draw % (steps.length + 1));
        const start: GradedRecord = { answers: {}, facts: {}, route };
        const forwards = gradeRecord(definition, deepFreeze(some.reduce(after, start)));
        const backwards = gradeRecord(definition, deepFreeze(some.toReversed().reduce(after, start)));
        expect(backwards).toEqual(forwards);
      }),
      RUNS,
    );
  });

  it('never scores lower after a remedy, one by one, by reach, or for having one more of them', () => {
    fc.assert(
      fc.property(sceneArb, fc.constantFrom(null, true, false), ({ definition, record }, fuseFits) => {
        fc.pre(definition.remedies.length > 0);
        const grading = gradeRecord(definition, record, { fuseFits });
        const fewer = gradeRecord({ ...definition, remedies: definition.remedies.slice(1) }, record, { fuseFits });
        expectNotBelow(grading.after.outside, grading.score);
        expectNotBelow(grading.after.workshop, grading.after.outside);
        expectNotBelow(grading.after.outside, fewer.after.outside);
        expectNotBelow(grading.after.workshop, fewer.after.workshop);
        for (const { gain, cumulative } of grading.remedies) {
          expectNotBelow(gain, { low: 0, high: 0 });
          expect(cumulative.low).toBeLessThanOrEqual(cumulative.high + EPS);
        }
        expect(rankOf(grading.verdict.low)).toBeGreaterThanOrEqual(rankOf(fewer.verdict.low));
        expect(rankOf(grading.verdict.high)).toBeGreaterThanOrEqual(rankOf(fewer.verdict.high));
      }),
      RUNS,
    );
  });

  it('divides each remedy’s gain into parts that sum to it, and the gains into the after-score, within 1e-9', () => {
    fc.assert(
      fc.property(sceneArb, ({ definition, record }) => {
        const { score, remedies, after: afterScores } = gradeRecord(definition, record);
        fc.pre(score !== null && remedies.length > 0);
        for (const end of ['low', 'high'] as const) {
          let reached = score?.[end] ?? Number.NaN;
          for (const { gain, buildGain, hazardGains, cumulative } of remedies) {
            const parts = hazardGains.reduce((sum, part) => sum + part.gain[end], buildGain[end]);
            expect(Math.abs(parts - gain[end])).toBeLessThan(EPS);
            reached += gain[end];
            expect(Math.abs(reached - cumulative[end])).toBeLessThan(EPS);
          }
          expect(Math.abs(reached - (afterScores.workshop?.[end] ?? Number.NaN))).toBeLessThan(EPS);
        }
      }),
      RUNS,
    );
  });

  it('keeps every factor when a second finding, no worse, comes under a hazard that has one', () => {
    fc.assert(
      fc.property(walkArb, fc.nat(), ({ definition, steps }, draw) => {
        const record = steps.reduce<GradedRecord>(after, { answers: {}, facts: {}, route: 'whole' });
        const pairs = pairsUnderOneHazard(definition, gradeRecord(definition, record));
        const pair = pairs[draw % Math.max(1, pairs.length)];
        fc.pre(pair !== undefined);
        const one = gradeRecord(
          definition,
          deepFreeze(withGrades(record, pair.first, { [pair.second.id]: pair.second.best })),
        );
        const two = gradeRecord(
          definition,
          deepFreeze(withGrades(record, pair.first, { [pair.second.id]: pair.second.finding })),
        );
        fc.pre(riskRank(two, pair.second.id) >= riskRank(two, pair.first.id));
        expect(two.factor).toEqual(one.factor);
        expect(two.hazards.map(({ k, risk }) => ({ k, risk }))).toEqual(
          one.hazards.map(({ k, risk }) => ({ k, risk })),
        );
      }),
      RUNS,
    );
  });

  it('keeps a ledger whose items sum to 100 − Build and whose factors lead down to the Score, within 1e-9', () => {
    fc.assert(
      fc.property(sceneArb, ({ definition, record }) => {
        const { ledger, build, score } = gradeRecord(definition, record);
        fc.pre(ledger !== null && build !== null && score !== null);
        const lost = ledger?.lines.reduce((sum, line) => sum + line.lostPoints, 0) ?? Number.NaN;
        const byFactors = ledger?.factors.reduce((sum, line) => sum + line.lostPoints, 0) ?? Number.NaN;
        expect(Math.abs(lost - (100 - (build?.low ?? Number.NaN)))).toBeLessThan(EPS);
        expect(Math.abs(100 - lost - byFactors - (score?.low ?? Number.NaN))).toBeLessThan(EPS);
        const ks = ledger?.factors.map(({ k }) => k) ?? [];
        expect(ks).toEqual(ks.toSorted((one, other) => one - other));
      }),
      RUNS,
    );
  });

  it('gives finite numbers in their bounds, and is settled exactly when the settled share is 1', () => {
    fc.assert(
      fc.property(sceneArb, ({ definition, record }) => {
        const grading = gradeRecord(definition, record);
        for (const range of [grading.score, grading.build]) {
          if (range === null) continue;
          expect(range.low).toBeGreaterThanOrEqual(0);
          expect(range.low).toBeLessThanOrEqual(range.high);
          expect(range.high).toBeLessThanOrEqual(100);
        }
        expect(grading.factor.low).toBeLessThanOrEqual(grading.factor.high);
        expect(grading.settled).toBe(Math.abs(grading.settledShareFrac - 1) < 1e-12);
        expect(grading.settled).toBe(grading.settledCount === grading.askedCount);
        const next = lookHereNext(definition, record);
        expect(next === null).toBe(grading.settled || grading.stop === 'failed');
      }),
      RUNS,
    );
  });
});

function gradingsAlong(
  definition: Checklist,
  start: GradedRecord,
  steps: readonly Parameters<typeof after>[1][],
): Grading[] {
  let record = start;
  const gradings = [gradeRecord(definition, record)];
  for (const step of steps) {
    record = deepFreeze(after(record, step));
    gradings.push(gradeRecord(definition, record));
  }
  return gradings;
}

function expectInside(later: Grading, earlier: Grading): void {
  expect(rankOf(later.verdict.low)).toBeGreaterThanOrEqual(rankOf(earlier.verdict.low));
  expect(rankOf(later.verdict.high)).toBeLessThanOrEqual(rankOf(earlier.verdict.high));
  // A failed stop item withholds the score: there is no range to compare from then on.
  if (later.score === null) return;
  expect(later.score.low).toBeGreaterThanOrEqual((earlier.score?.low ?? Number.NaN) - EPS);
  expect(later.score.high).toBeLessThanOrEqual((earlier.score?.high ?? Number.NaN) + EPS);
}

/** The record with each of its grades made worse, in every way its item offers. */
function worseningsOf(definition: Checklist, record: GradedRecord): GradedRecord[] {
  return definition.items.flatMap((item) => {
    const answer = record.answers[item.id];
    if (answer?.kind !== 'grade') return [];
    const worse = GRADES.filter(
      (grade) => item.grades[grade] !== undefined && gradeRank(grade) > gradeRank(answer.grade),
    );
    return worse.map((grade) => ({ ...record, answers: { ...record.answers, [item.id]: { ...answer, grade } } }));
  });
}

interface Pair {
  first: { id: string; finding: Grade };
  second: { id: string; best: Grade; finding: Grade };
}

/** Two applying items under one hazard, the first of which can be a finding, the second a finding and not. */
function pairsUnderOneHazard(definition: Checklist, grading: Grading): Pair[] {
  const applying = definition.items.filter(
    (item) =>
      item.hazard !== undefined && grading.items.some((result) => result.itemId === item.id && result.grade !== null),
  );
  return applying.flatMap((one) =>
    applying.flatMap((other) => {
      if (one === other || one.hazard !== other.hazard) return [];
      const findings = (['weak', 'failed'] as const).filter((grade) => one.grades[grade] !== undefined);
      const others = (['weak', 'failed'] as const).filter((grade) => other.grades[grade] !== undefined);
      const best = (['sound', 'passable'] as const).find((grade) => other.grades[grade] !== undefined);
      if (best === undefined) return [];
      return findings.flatMap((finding) =>
        others.map((second) => ({ first: { id: one.id, finding }, second: { id: other.id, best, finding: second } })),
      );
    }),
  );
}

function withGrades(record: GradedRecord, first: Pair['first'], second: Record<string, Grade>): GradedRecord {
  const grades = Object.entries({ [first.id]: first.finding, ...second });
  const answers = grades.map(([id, grade]) => [id, { kind: 'grade', grade, evidence: 'seen' }] as const);
  return { ...record, answers: { ...record.answers, ...Object.fromEntries(answers) } };
}

/** Rank of the risk a finding brings, worst 0; Infinity for none. */
function riskRank(grading: Grading, itemId: string): number {
  const risk = grading.findings.find((finding) => finding.itemId === itemId)?.risk ?? null;
  return risk === null ? Number.POSITIVE_INFINITY : RISK_LEVELS.indexOf(risk);
}

function expectNotBelow(range: Range | null, floor: Range | null): void {
  expect(range === null).toBe(floor === null);
  if (range === null || floor === null) return;
  expect(range.low).toBeGreaterThanOrEqual(floor.low - EPS);
  expect(range.high).toBeGreaterThanOrEqual(floor.high - EPS);
}

/** A withheld score stands below every other. */
function orWithheld(score: Range | null): Range {
  return score ?? { low: -1, high: -1 };
}

function rankOf(verdict: Grading['verdict']['low']): number {
  return VERDICTS.indexOf(verdict);
}
