import type { Fact, Item } from '../schema/checklist.ts';
import { arrivalWords } from '../text/arrival.ts';
import { itemWords, lidOffWords } from '../text/item.ts';
import { liveTestsWords } from '../text/live-tests/live-tests.ts';
import { type Asking, isClosed, neighbours, type Question, questionId } from './questions.ts';
import { hrefTo } from './route.ts';

/** Before the lid comes off, where what is asked in a state is listed. */
const HOMES = {
  arrival: { place: 'arrival', title: arrivalWords.title },
  loaded: { place: 'live-tests', title: liveTestsWords.title },
} as const;

/** Where the list of an item or fact is: Arrival, Live tests, or its zone under Lid off. */
export function homeOf(packId: string, question: Item | Fact): string {
  if (isClosed(question.state)) return hrefTo(packId, HOMES[question.state].place);
  return question.zone === undefined ? hrefTo(packId, 'lid-off') : hrefTo(packId, 'zone', question.zone);
}

export function hrefOf(packId: string, question: Question): string {
  return hrefTo(packId, question.kind, questionId(question));
}

/** Where a question stands among its neighbours, and where Next leads: the next open one, else back to the list. */
export function placeAmong(asking: Asking, question: Question) {
  const subject = question.kind === 'item' ? question.item : question.fact;
  const all = neighbours(asking, { state: subject.state, zone: subject.zone });
  const index = all.findIndex((other) => questionId(other) === subject.id);
  const { packId } = asking.record;
  const next = [...all.slice(index + 1), ...all.slice(0, Math.max(0, index))].find(({ open }) => open);
  const zoneTitle = asking.definition.zones.find(({ id }) => id === subject.zone)?.title ?? lidOffWords.title;
  return {
    position: index < 0 ? '' : itemWords.position(index + 1, all.length),
    homeTitle: isClosed(subject.state) ? HOMES[subject.state].title : zoneTitle,
    isLast: next === undefined,
    nextHref: next ? hrefOf(packId, next) : homeOf(packId, subject),
  };
}
