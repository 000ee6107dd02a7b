import fc from 'fast-check';
import * as v from 'valibot';
import { type Checklist, checklistSchema } from '../../src/schema/checklist.ts';
import { GRADES, type Grade } from '../../src/schema/grade.ts';
import { deepFreeze } from './deep-freeze.ts';
import { rawItem } from './small-definition.ts';

type RawChecklist = v.InferInput<typeof checklistSchema>;
type RawItem = RawChecklist['items'][number];
type RawRemedy = RawChecklist['remedies'][number];

const LETTERS = ['A', 'B', 'C', 'D', 'E'] as const;
type Letter = (typeof LETTERS)[number];

/** Sizes of the parts a definition is made of. */
interface Frame {
  zoneCount: number;
  hazardCount: number;
  choiceCounts: number[];
}

const frameArb: fc.Arbitrary<Frame> = fc.record({
  zoneCount: fc.integer({ min: 1, max: 3 }),
  hazardCount: fc.integer({ min: 0, max: 3 }),
  choiceCounts: fc.array(fc.integer({ min: 2, max: 3 }), { maxLength: 2 }),
});

/**
 * Small definitions that checkDefinition admits, with everything varied that grading reads: zone and item weights,
 * credits, k, facts, conditions, reasons not to apply, stop and safety items, grades offered, severities, stated
 * likelihoods and remedies.
 */
export const definitionArb: fc.Arbitrary<Checklist> = frameArb.chain((frame) =>
  fc
    .record({
      zoneWeights: fc.array(fc.double({ min: 0.01, max: 5, noNaN: true }), exactly(frame.zoneCount)),
      k: kArb,
      credits: creditsArb,
      anchors: anchorsArb(frame),
      others: fc.array(itemArb(frame), { maxLength: 6 }),
    })
    .chain((parts) => {
      const items = [...parts.anchors, ...parts.others].map((item, place) => ({ ...item, id: `item-${place}` }));
      return fc.array(remedyArb(items.filter(({ stop }) => stop !== true)), { maxLength: 4 }).map((remedies) => {
        const raw = {
          id: 'made-up',
          version: '1.0.0',
          status: 'draft',
          title: 'Made up',
          fits: 'Nothing real.',
          zones: parts.zoneWeights.map((weight, place) => ({ id: `zone-${place}`, title: 'Zone', weight })),
          hazards: named('hazard', frame.hazardCount).map((id) => ({ id, title: 'Hazard', harm: 'Harm.' })),
          k: parts.k,
          credits: parts.credits,
          facts: frame.choiceCounts.map((count, place) => ({
            id: `fact-${place}`,
            state: 'arrival' as const,
            ask: 'Which?',
            choices: named('choice', count).map((id) => ({ id, text: 'Choice' })),
          })),
          items,
          remedies: remedies.map((remedy, place) => ({ ...remedy, id: `remedy-${place}` })),
        } satisfies RawChecklist;
        return deepFreeze(v.parse(checklistSchema, raw));
      });
    }),
);

const kArb = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), exactly(3))
  .map((ks) => ks.toSorted((one, other) => one - other))
  .map(([high = 0, serious = 0, medium = 0]) => ({ high, serious, medium, low: 1 }));

/** Strictly falling: four different whole hundredths. */
const creditsArb = fc
  .uniqueArray(fc.integer({ min: 0, max: 100 }), exactly(4))
  .map((credits) => credits.toSorted((one, other) => other - one).map((credit) => credit / 100))
  .map(([sound = 1, passable = 0, weak = 0, failed = 0]) => ({ sound, passable, weak, failed }));

/** One short-route item that always applies for every zone and every hazard; the first never stops, so remedies fit. */
function anchorsArb(frame: Frame): fc.Arbitrary<RawItem[]> {
  const count = Math.max(frame.zoneCount, frame.hazardCount);
  return fc.array(itemArb(frame), exactly(count)).chain((items) =>
    fc.tuple(
      ...items.map((item, place) => {
        const { onlyIf: _, ...always } = item;
        const zone = place < frame.zoneCount ? `zone-${place}` : item.zone;
        const anchor: RawItem = {
          ...always,
          zone,
          route: 'short',
          mayNotApply: [],
          stop: item.stop === true && place > 0,
        };
        if (place >= frame.hazardCount) return fc.constant(anchor);
        return fc
          .constantFrom(1 as const, 2 as const, 3 as const, 4 as const)
          .map((severity) => ({ ...anchor, hazard: `hazard-${place}`, severity: anchor.severity ?? severity }));
      }),
    ),
  );
}

function itemArb(frame: Frame): fc.Arbitrary<RawItem> {
  return fc
    .record({
      zone: fc.constantFrom(...named('zone', frame.zoneCount)),
      route: fc.constantFrom('short' as const, 'whole' as const),
      weight: fc.integer({ min: 1, max: 5 }),
      safety: fc.boolean(),
      stop: fc.nat(7).map((draw) => draw === 0),
      offered: fc.subarray([...GRADES], { minLength: 2 }),
      hazard: maybe(named('hazard', frame.hazardCount)),
      severity: fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const),
      likelihood: likelihoodArb,
      condition: maybe(frame.choiceCounts.flatMap((count, fact) => named(`fact-${fact}/choice`, count))),
      optional: fc.boolean(),
    })
    .map((drawn): RawItem => {
      const { zone, weight, safety, stop, hazard, severity, likelihood } = drawn;
      const offered = stop && !drawn.offered.includes('failed') ? [...drawn.offered, 'failed' as const] : drawn.offered;
      const [fact, is] = drawn.condition?.split('/') ?? [];
      return rawItem({
        id: 'unnamed',
        zone,
        weight,
        safety,
        stop,
        route: safety || stop ? 'short' : drawn.route,
        grades: Object.fromEntries(offered.map((grade) => [grade, `Looks ${grade}.`])),
        mayNotApply: !safety && !stop && drawn.optional ? ['none is fitted'] : [],
        ...(fact !== undefined && is !== undefined ? { onlyIf: { fact, is } } : {}),
        ...(hazard === null ? {} : { hazard, severity }),
        ...(hazard !== null && neverFalls(likelihood, safety, offered) ? { likelihood: given(likelihood) } : {}),
      });
    });
}

const statedArb = fc.option(fc.constantFrom(...LETTERS), { nil: undefined });
const likelihoodArb = fc.record({ passable: statedArb, weak: statedArb, failed: statedArb });
type Stated = { [G in 'passable' | 'weak' | 'failed']?: Letter | undefined };

/** Whether a stated likelihood, filled up by the rule (passable none, weak D, failed C or B), never falls. */
function neverFalls(stated: Stated, safety: boolean, offered: readonly Grade[]): boolean {
  const rule: Stated = { weak: 'D', failed: safety ? 'B' : 'C' };
  const ranks = offered.map((grade) => {
    const letter = grade === 'sound' ? undefined : (stated[grade] ?? rule[grade]);
    return letter === undefined ? 0 : LETTERS.length - LETTERS.indexOf(letter);
  });
  return ranks.every((rank, place) => rank >= (ranks[place - 1] ?? 0));
}

function remedyArb(items: readonly RawItem[]): fc.Arbitrary<RawRemedy> {
  return fc
    .record({
      reach: fc.constantFrom('outside' as const, 'workshop' as const),
      needs: fc.boolean(),
      settles: fc.uniqueArray(settlesArb(items), { minLength: 1, maxLength: 3, selector: ({ item }) => item }),
    })
    .map(({ reach, needs, settles }) => ({
      id: 'unnamed',
      text: 'Put it right.',
      reach,
      settles,
      ...(needs && reach === 'outside' ? { needs: 'fuseFits' as const } : {}),
    }));
}

function settlesArb(items: readonly RawItem[]): fc.Arbitrary<{ item: string; leaves: Grade }> {
  return fc
    .constantFrom(...items)
    .chain((item) => fc.constantFrom(...offeredBy(item)).map((leaves) => ({ item: item.id, leaves })));
}

function offeredBy({ grades }: RawItem): Grade[] {
  return GRADES.filter((grade) => grades[grade] !== undefined);
}

function given(stated: Stated): NonNullable<RawItem['likelihood']> {
  const { passable, weak, failed } = stated;
  return {
    ...(passable === undefined ? {} : { passable }),
    ...(weak === undefined ? {} : { weak }),
    ...(failed === undefined ? {} : { failed }),
    because: 'Made up.',
  };
}

function maybe(ids: readonly string[]): fc.Arbitrary<string | null> {
  return ids.length === 0 ? fc.constant(null) : fc.option(fc.constantFrom(...ids));
}

function named(word: string, count: number): string[] {
  return Array.from({ length: count }, (_, place) => `${word}-${place}`);
}

function exactly(length: number): { minLength: number; maxLength: number } {
  return { minLength: length, maxLength: length };
}
