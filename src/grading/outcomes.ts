import type { Answer } from '../schema/answer.ts';
import type { Bands, Checklist, Item } from '../schema/checklist.ts';
import { type Evidence, GRADES, type Grade } from '../schema/grade.ts';
import { derived } from './derive/derive.ts';
import type { Derived } from './derive/figure.ts';
import { gradesOf } from './derive/grades-of.ts';
import { measured } from './derive/measure.ts';
import { factSays, type KnownFacts, knownFacts } from './facts.ts';
import type { ItemResult } from './grading.ts';
import type { Judged } from './judged.ts';
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
  measured: ItemResult['measured'];
  error?: string;
}

type Read = Omit<ItemOutcomes, 'item' | 'set'>;

/** The outcomes still possible of every item, in definition order. */
export function outcomesOf(definition: Checklist, record: Judged): ItemOutcomes[] {
  const known = knownFacts(definition, record.facts);
  return definition.items.map((item) => {
    if (!isAsked(item, record.route)) return { item, set: NOT_ASKED, ...nothing(NOT_ASKED, 'notAsked') };
    const read = readSafely(item, record);
    return underFact(item, read, known);
  });
}

export function isAsked(item: Item, route: Judged['route']): boolean {
  return route === 'whole' || item.route === 'short';
}

/** The answer kept for an item. Ids are words such as "constructor" too, so only the record's own keys count. */
export function answerOf(record: Pick<Judged, 'answers'>, itemId: string): Answer | undefined {
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
  if (says === 'open' && (read.because === 'answered' || read.because === 'measured'))
    return { item, set, ...read, because: 'factOpen' };
  return { item, set, ...read };
}

/** One bad computation is one error outcome, kept with its message; it settles nothing. */
function readSafely(item: Item, record: Judged): Read {
  try {
    const found = derived(item, record);
    const answer = answerOf(record, item.id);
    return found === null ? read(item, answer, record) : readDerived(item, found, answer);
  } catch (cause) {
    const error = cause instanceof Error ? cause.message : String(cause);
    return { ...nothing(everything(item), 'error'), error };
  }
}

function read(item: Item, answer: Answer | undefined, record: Judged): Read {
  if (answer === undefined || answer.kind === 'open') return nothing(everything(item), 'unanswered');
  if (answer.kind === 'notSeen') return nothing(everything(item), 'notSeen');
  if (answer.kind === 'doesNotApply') {
    if (item.mayNotApply.length > 0) return nothing(DOES_NOT_APPLY, 'doesNotApply');
    throw new RangeError(`outcomesOf: ${item.id} must be graded, it offers no reason not to apply`);
  }
  if (answer.kind === 'grade') return graded(item, answer);
  if (answer.kind === 'readings') return readReadings(item, answer, record);
  throw new TypeError(`outcomesOf: ${item.id} must hold a known kind of answer, got ${JSON.stringify(answer)}`);
}

/** A maker's claim alone settles a safety item at passable at best (DESIGN §5, "told"). */
function graded(item: Item, answer: Extract<Answer, { kind: 'grade' }>): Read {
  if (!offered(item).includes(answer.grade)) {
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
    measured: null,
  };
}

/**
 * The live tests say something of the item. A grade that a person gave counts beside them where they leave it possible,
 * and against them with a reason; without one the tests count. What was only told never counts against a measurement.
 */
function readDerived(item: Item, found: Derived, answer: Answer | undefined): Read {
  const possible = possibleOf(item, item.derive?.bands, found);
  const answered = answer?.kind === 'grade' ? graded(item, answer) : null;
  if (answer?.kind === 'grade' && answered?.grade) {
    const isOwn = answer.overrules !== undefined && answer.evidence !== 'told';
    const overrules = isOwn && !isSame(possible, answered.grade);
    const fits = possible.length > 1 && possible.includes(answered.grade);
    if (overrules || fits)
      return { ...answered, measured: { possible, found, overrules: overrules ? (answer.overrules ?? null) : null } };
  }
  // What was measured applies, whatever was said before it was.
  return asMeasured(possible, found, 'measured');
}

function readReadings(item: Item, answer: Extract<Answer, { kind: 'readings' }>, { nameplate = {} }: Judged): Read {
  const found = measured(item, answer, nameplate);
  const { overruled } = answer;
  if (found === null && overruled === undefined) return nothing(everything(item), 'unanswered');
  const possible = found === null ? [] : possibleOf(item, item.measure?.bands, found);
  if (overruled !== undefined && answer.evidence !== 'told' && !isSame(possible, overruled.grade)) {
    const read = graded(item, { kind: 'grade', grade: overruled.grade, evidence: answer.evidence });
    return found === null ? read : { ...read, measured: { possible, found, overrules: overruled.because } };
  }
  return found === null ? nothing(everything(item), 'unanswered') : asMeasured(possible, found, answer.evidence);
}

function asMeasured(possible: Grade[], found: Derived, evidence: Evidence): Read {
  const [only] = possible;
  return {
    own: possible.reduce((set, grade) => set | setOf(grade), NOT_ASKED),
    because: 'measured',
    grade: possible.length === 1 && only !== undefined ? only : null,
    evidence,
    loweredByTold: false,
    unlooked: false,
    measured: { possible, found, overrules: null },
  };
}

function possibleOf(item: Item, bands: Bands | undefined, found: Derived): Grade[] {
  if (bands === undefined) throw new TypeError(`outcomesOf: ${item.id} must have bands for what was measured`);
  return gradesOf(bands, found, offered(item));
}

function isSame(possible: readonly Grade[], grade: Grade): boolean {
  return possible.length === 1 && possible[0] === grade;
}

function nothing(own: OutcomeSet, because: ItemResult['because']): Read {
  return { own, because, grade: null, evidence: null, loweredByTold: false, unlooked: false, measured: null };
}

/** All an item has: the grades it offers, and not applying where it offers a reason for that. */
function everything(item: Item): OutcomeSet {
  const start = item.mayNotApply.length > 0 ? DOES_NOT_APPLY : NOT_ASKED;
  return offered(item).reduce((set, grade) => set | setOf(grade), start);
}

/** The grades an item offers, best first. */
export function offered(item: Item): Grade[] {
  return GRADES.filter((grade) => item.grades[grade] !== undefined);
}
