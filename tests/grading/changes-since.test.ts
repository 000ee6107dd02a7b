import { describe, expect, it } from 'vitest';
import { changesSince, type GradedPack } from '../../src/grading/changes-since.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import type { Nameplate } from '../../src/schema/nameplate.ts';
import { graded } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { packOf } from './live-tests/tested-pack.ts';
import { definitionWith, smallDefinition } from './small-definition.ts';

interface Given {
  definition?: Checklist;
  answers?: Record<string, Answer>;
  facts?: Record<string, string>;
  route?: PackRecord['route'];
  nameplate?: Nameplate;
}

/** Every item sound but those given. */
function pack(given: Given = {}): GradedPack {
  const { definition = smallDefinition, facts = { 'metal-case': 'no' }, route = 'whole', nameplate = {} } = given;
  const sound = Object.fromEntries(smallDefinition.items.map(({ id }) => [id, graded('sound')]));
  const record = { ...packOf(nameplate), answers: { ...sound, ...given.answers }, facts, route };
  return deepFreeze({ definition, record, grading: gradeRecord(definition, record) });
}

const OPEN: Answer = { kind: 'open', note: 'later' };

describe('scores and verdicts of two samples', () => {
  // Case: q = 2·0 / 3 with lid-fit failed and label sound: 1/3; Build = 25·(1/3) + 50 + 25 = 83.33. No hazard.
  it('stand side by side: 100 settled then, 83.33 now, surely lower, one new finding that was sound', () => {
    const changes = changesSince(pack(), pack({ answers: { 'lid-fit': graded('failed') } }));
    expect(changes).toMatchObject({
      apart: null,
      scoreWent: 'lower',
      was: { score: { low: 100, high: 100 }, settled: true, verdict: { low: 'noFinding' } },
      now: { settled: true, verdict: { low: 'mindTheList', settled: true } },
      items: { appeared: [{ itemId: 'lid-fit', was: { grade: 'sound' }, now: { grade: 'failed' } }] },
    });
    expect(changes.now.score?.low).toBeCloseTo(83.3333333, 6);
    expect(changesSince(pack({ answers: { 'lid-fit': graded('failed') } }), pack()).scoreWent).toBe('higher');
  });

  it('cannot be told apart while their ranges overlap: 100 then, an open item now', () => {
    expect(changesSince(pack(), pack({ answers: { tidy: OPEN } })).scoreWent).toBe('cannotTell');
  });

  it('are never compared as one: a short and a whole route', () => {
    const changes = changesSince(pack({ route: 'short' }), pack({ answers: { 'lid-fit': graded('failed') } }));
    expect(changes).toMatchObject({ apart: 'routes', scoreWent: null });
    expect(changes.items?.comparedCount).toBe(6);
  });

  it.each([
    ['1.0.7', null, 'same'],
    ['1.1.0', 'versions', null],
    ['2.0.0', 'versions', null],
  ])('by checklist 1.0.0 then and %s now: apart by %s', (version, apart, scoreWent) => {
    const now = pack({ definition: definitionWith({ version }) });
    expect(changesSince(pack(), now)).toMatchObject({ apart, scoreWent });
  });

  it('by another checklist: no item is compared, an id means the same within one only', () => {
    const now = pack({ definition: definitionWith({ id: 'other' }) });
    expect(changesSince(pack(), now)).toMatchObject({ apart: 'checklists', scoreWent: null, items: null });
  });

  it('withheld by a stop item: no score is compared', () => {
    const changes = changesSince(pack(), pack({ answers: { swollen: graded('failed') } }));
    expect(changes).toMatchObject({ apart: null, scoreWent: null, now: { score: null, stop: 'failed' } });
  });
});

it('a record compared with itself: the same score, nothing new, worse, better or gone, no figure, no claim', () => {
  const one = pack({ answers: { 'lid-fit': graded('weak'), tidy: graded('failed') }, nameplate: { price: 500 } });
  const changes = changesSince(one, one);
  expect(changes).toMatchObject({ apart: null, scoreWent: 'same', figures: [], claims: [] });
  expect(changes.items).toMatchObject({
    appeared: [],
    worse: [],
    better: [],
    gone: [],
    notLookedAgain: [],
    foundBoth: [],
    sameCount: 9,
  });
});

it('a chain: the third sample is compared with the second, whose finding was new since the first', () => {
  const [first, second] = [pack(), pack({ answers: { 'lid-fit': graded('weak') } })];
  const third = pack({ answers: { 'lid-fit': graded('failed') } });
  expect(changesSince(first, second).items?.appeared.map(({ itemId }) => itemId)).toEqual(['lid-fit']);
  expect(changesSince(second, third).items).toMatchObject({ appeared: [], worse: [{ itemId: 'lid-fit' }] });
});
