import type { PackRecord } from '../record/pack-record.ts';
import type { Answer } from '../schema/answer.ts';
import type { Checklist, Item } from '../schema/checklist.ts';
import { type Evidence, GRADES, type Grade } from '../schema/grade.ts';
import { factSays, type KnownFacts, knownFacts } from './facts.ts';
import type { ItemResult } from './grading.ts';
import { DOES_NOT_APPLY, NOT_ASKED, type OutcomeSet, setOf } from './outcome-set.ts';

/** What a record leaves possible of one item, and why. */
export interface ItemOutcomes {
  item: Item;
  set: OutcomeSet;
  /** What the item's own answer leaves, its fact left aside: the set, should the fact let it apply. */
  own: OutcomeSet;
  because: ItemResult['because'];
  grade: Grade | null;
  evidence: Evidence | null;
  loweredByTold: boolean;
  unlooked: boolean;
  error?: string;
}

type Read = Omit<ItemOutcomes, 'item' | 'set'>;

/** The outcomes still possible of every item, in definition order. */
export function outcomesOf(
  definition: Checklist,
  record: Pick<PackRecord, 'answers' | 'facts' | 'route'>,
): ItemOutcomes[] {
  const known = knownFacts(definition, record.facts);
  return definition.items.map((item) => {
    if (!isAsked(item, record.route)) return { item, set: NOT_ASKED, ...nothing(NOT_ASKED, 'notAsked') };
    const read = readSafely(item, answerOf(record, item.id));
    return underFact(item, read, known);
  });
}

export function isAsked(item: Item, route: PackRecord['route']): boolean {
  return route === 'whole' || item.route === 'short';
}

/** The answer kept for an item. Ids are words such as "constructor" too, so only the record's own keys count. */
export function answerOf(record: Pick<PackRecord, 'answers'>, itemId: string): Answer | undefined {
  return Object.hasOwn(record.answers, itemId) ? record.answers[itemId] : undefined;
}

/** The set an item has once its own answer leaves `own` and its fact says what it says. */
export function setUnderFact(own: OutcomeSet, says: ReturnType<typeof factSays>): OutcomeSet {
  if (says === 'excludes') return DOES_NOT_APPLY;
  return says === 'open' ? own | DOES_NOT_APPLY : own;
}

function underFact(item: Item, read: Read, known: KnownFacts): ItemOutcomes {
  const says = factSays(item, known);
  const set = setUnderFact(read.own, says);
  if (says === 'excludes') return { item, set, ...nothing(read.own, 'factExcludes') };
  if (says === 'open' && read.because === 'answered') return { item, set, ...read, because: 'factOpen' };
  return { item, set, ...read };
}

/** One bad computation is one error outcome, kept with its message; it settles nothing. */
function readSafely(item: Item, answer: Answer | undefined): Read {
  try {
    return read(item, answer);
  } catch (cause) {
    const error = cause instanceof Error ? cause.message : String(cause);
    return { ...nothing(everything(item), 'error'), error };
  }
}

function read(item: Item, answer: Answer | undefined): Read {
  if (answer === undefined || answer.kind === 'open') return nothing(everything(item), 'unanswered');
  if (answer.kind === 'notSeen') return nothing(everything(item), 'notSeen');
  if (answer.kind === 'doesNotApply') {
    if (item.mayNotApply.length > 0) return nothing(DOES_NOT_APPLY, 'doesNotApply');
    throw new RangeError(`outcomesOf: ${item.id} must be graded, it offers no reason not to apply`);
  }
  if (answer.kind === 'grade') return graded(item, answer);
  throw new TypeError(`outcomesOf: ${item.id} must hold a known kind of answer, got ${JSON.stringify(answer)}`);
}

/** A maker's claim alone settles a safety item at passable at best (DESIGN §5, "told"). */
function graded(item: Item, answer: Extract<Answer, { kind: 'grade' }>): Read {
  if (!gradesOf(item).includes(answer.grade)) {
    throw new RangeError(`outcomesOf: ${item.id} must have one of its own grades, got ${answer.grade}`);
  }
  const loweredByTold = item.safety && answer.evidence === 'told' && answer.grade === 'sound';
  const grade = loweredByTold ? 'passable' : answer.grade;
  return {
    own: setOf(grade),
    because: 'answered',
    grade,
    evidence: answer.evidence,
    loweredByTold,
    unlooked: answer.unlooked === true,
  };
}

function nothing(own: OutcomeSet, because: ItemResult['because']): Read {
  return { own, because, grade: null, evidence: null, loweredByTold: false, unlooked: false };
}

/** All an item has: the grades it offers, and not applying where it offers a reason for that. */
function everything(item: Item): OutcomeSet {
  const start = item.mayNotApply.length > 0 ? DOES_NOT_APPLY : NOT_ASKED;
  return gradesOf(item).reduce((set, grade) => set | setOf(grade), start);
}

function gradesOf(item: Item): Grade[] {
  return GRADES.filter((grade) => item.grades[grade] !== undefined);
}
