import { type Signal, signal } from '@preact/signals';
import { keepOnPhone, keptOnPhone } from '../state/kept.ts';
import type { FilledIn } from './storable-test.ts';

type Tests = Readonly<Record<string, FilledIn>>;

/**
 * Tests that lack a field without which they are none, by id. They are no part of the record yet, but kept on the phone,
 * so that a dropped page costs nothing.
 */
const shelves = new Map<string, Signal<Tests>>();

export function unfinishedTests(packId: string, kindId: string): Signal<Tests> {
  const name = nameOf(packId, kindId);
  const known = shelves.get(name);
  if (known) return known;
  const shelf = signal<Tests>({});
  shelves.set(name, shelf);
  void keptOnPhone<Tests>(name).then((found) => {
    if (found !== null) shelf.value = { ...found, ...shelf.value };
  });
  return shelf;
}

/** Null takes it away. */
export function keepUnfinished(place: { packId: string; kindId: string; id: string }, test: FilledIn | null): void {
  const shelf = unfinishedTests(place.packId, place.kindId);
  const { [place.id]: _before, ...others } = shelf.value;
  shelf.value = test === null ? others : { ...others, [place.id]: test };
  void keepOnPhone(nameOf(place.packId, place.kindId), Object.keys(shelf.value).length === 0 ? null : shelf.value);
}

function nameOf(packId: string, kindId: string): string {
  return `liveTest/${packId}/${kindId}`;
}
