import fc from 'fast-check';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Checklist, Item } from '../../src/schema/checklist.ts';
import { EVIDENCE, GRADES } from '../../src/schema/grade.ts';
import { definitionArb } from './arbitrary-definition.ts';
import { deepFreeze } from './deep-freeze.ts';

export type GradedRecord = Pick<PackRecord, 'answers' | 'facts' | 'route'>;

/** One thing a person does: answers an item, or a fact. */
export type Step = { itemId: string; answer: Answer } | { factId: string; choice: string };

/** A definition and a record of it in which anything may be open. */
export const sceneArb = definitionArb.chain((definition) =>
  recordArb(definition).map((record) => deepFreeze({ definition, record })),
);

/** A definition, a route, and all that settles it, in a random order. */
export const walkArb = definitionArb.chain((definition) =>
  fc
    .record({
      route: routeArb,
      answers: fc.tuple(
        ...definition.items.map((item) => settlingArb(item).map((answer): Step => ({ itemId: item.id, answer }))),
      ),
      choices: fc.tuple(...definition.facts.map(stepOfFact)),
    })
    .chain(({ route, answers, choices }) => {
      const steps = [...answers, ...choices];
      return fc
        .shuffledSubarray(steps, { minLength: steps.length })
        .map((shuffled) => deepFreeze({ definition, route, steps: shuffled }));
    }),
);

export const routeArb = fc.constantFrom('short' as const, 'whole' as const);

export function recordArb(definition: Checklist): fc.Arbitrary<GradedRecord> {
  const answers = fc.record(Object.fromEntries(definition.items.map((item) => [item.id, answerArb(item)])));
  const facts = fc.record(
    Object.fromEntries(
      definition.facts.map(({ id, choices }) => [
        id,
        fc.option(fc.constantFrom(...choices.map((choice) => choice.id))),
      ]),
    ),
  );
  return fc
    .record({ answers, facts, route: routeArb })
    .map((drawn) => ({ answers: given(drawn.answers), facts: given(drawn.facts), route: drawn.route }));
}

/** The record after a step. */
export function after(record: GradedRecord, step: Step): GradedRecord {
  if ('itemId' in step) return { ...record, answers: { ...record.answers, [step.itemId]: step.answer } };
  return { ...record, facts: { ...record.facts, [step.factId]: step.choice } };
}

/** An answer that leaves one outcome once the facts are known. */
export function settlingArb(item: Item): fc.Arbitrary<Answer> {
  const grades = GRADES.filter((grade) => item.grades[grade] !== undefined);
  const graded = fc
    .record({ grade: fc.constantFrom(...grades), evidence: fc.constantFrom(...EVIDENCE) })
    .map((drawn): Answer => ({ kind: 'grade', ...drawn }));
  if (item.mayNotApply.length === 0) return graded;
  const falling: Answer = { kind: 'doesNotApply', reason: 'none is fitted' };
  return fc.oneof({ arbitrary: graded, weight: 3 }, { arbitrary: fc.constant(falling), weight: 1 });
}

function answerArb(item: Item): fc.Arbitrary<Answer | null> {
  return fc.oneof(
    { arbitrary: settlingArb(item), weight: 5 },
    { arbitrary: fc.constant<Answer | null>(null), weight: 2 },
    { arbitrary: fc.constant<Answer>({ kind: 'notSeen', reason: 'under potting' }), weight: 1 },
  );
}

function stepOfFact(fact: Checklist['facts'][number]): fc.Arbitrary<Step> {
  return fc.constantFrom(...fact.choices).map((choice) => ({ factId: fact.id, choice: choice.id }));
}

function given<T>(drawn: Readonly<Record<string, T | null>>): Record<string, T> {
  return Object.fromEntries(Object.entries(drawn).flatMap(([id, value]) => (value === null ? [] : [[id, value]])));
}
