import type { Grading } from '../grading/grading.ts';
import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist, Fact, Item } from '../schema/checklist.ts';
import type { PackState } from '../schema/pack-states.ts';

/** What is asked one at a time: an item to grade, or a fact about the pack. */
export type Question = { kind: 'item'; item: Item; open: boolean } | { kind: 'fact'; fact: Fact; open: boolean };

export interface Asking {
  definition: Checklist;
  record: PackRecord;
  grading: Grading;
}

/** The questions of a state, facts first, in definition order; items off the route or excluded by a fact left out. */
export function questionsOf(asking: Asking, state: PackState, zoneId?: string): Question[] {
  const { definition, record, grading } = asking;
  const facts = definition.facts
    .filter((fact) => fact.state === state && (zoneId === undefined || fact.zone === zoneId))
    .filter((fact) => record.route === 'whole' || isNeeded(asking, fact.id))
    .map((fact): Question => ({ kind: 'fact', fact, open: record.facts[fact.id] === undefined }));
  const results = new Map(grading.items.map((result) => [result.itemId, result]));
  const items = definition.items
    .filter((item) => item.state === state && (zoneId === undefined || item.zone === zoneId))
    .flatMap((item): Question[] => {
      const result = results.get(item.id);
      if (!result?.asked || result.because === 'factExcludes') return [];
      const answer = record.answers[item.id];
      const leftOut = answer?.kind === 'notSeen' || answer?.kind === 'doesNotApply';
      // A grade may come from a person or from what was measured; readings that leave two possible are still open.
      return [{ kind: 'item', item, open: !leftOut && result.grade === null }];
    });
  return [...facts, ...items];
}

export function questionId(question: Question): string {
  return question.kind === 'item' ? question.item.id : question.fact.id;
}

/** On the short route a fact is asked only if one of its items is. */
function isNeeded({ definition }: Asking, factId: string): boolean {
  return definition.items.some((item) => item.route === 'short' && item.onlyIf?.fact === factId);
}

/** The questions among which an item or fact stands: its state, and in Lid off its zone. */
export function neighbours(asking: Asking, question: { state: PackState; zone?: string | undefined }): Question[] {
  return questionsOf(asking, question.state, isClosed(question.state) ? undefined : question.zone);
}

/** Asked before the lid comes off: at Arrival, or with the Live tests. */
export function isClosed(state: PackState): state is 'arrival' | 'loaded' {
  return state === 'arrival' || state === 'loaded';
}
