import { gradeRecord } from '../../../src/grading/grade-record.ts';
import type { ItemResult } from '../../../src/grading/grading.ts';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import type { Answer } from '../../../src/schema/answer.ts';
import type { CutOff } from '../../../src/schema/live-tests/cut-off.ts';
import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import type { Trip } from '../../../src/schema/live-tests/trip.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { deepFreeze } from '../deep-freeze.ts';

type Without<T> = Omit<T, 'made'>;

/** Live tests as folded, with the ids and stamps that do not matter here filled in. */
export function testsOf(given: Partial<LiveTests>): LiveTests {
  return deepFreeze({ ...NO_LIVE_TESTS, ...given });
}

export function cutOffs(...list: Without<CutOff>[]): Partial<LiveTests> {
  return { cutOffs: list.map((one, place) => ({ ...one, ...named(place) }) as LiveTests['cutOffs'][number]) };
}

export function trips(...list: Without<Trip>[]): Partial<LiveTests> {
  return { trips: list.map((one, place) => ({ ...one, ...named(place) }) as LiveTests['trips'][number]) };
}

type Cells = LiveTests['cellSets'][number];

/** One round of readings: cell 1 is the first of `cells`; null was not read. */
export function cellSet(
  state: Cells['state'],
  cells: readonly (Omit<Cells['cells'][number], 'number'> | number | null)[],
): Cells {
  return {
    ...named(0),
    state,
    cells: cells.flatMap((cell, at) => {
      if (cell === null) return [];
      return [{ number: at + 1, ...(typeof cell === 'number' ? { voltageV: cell } : cell) }];
    }),
  };
}

export function named(place: number): { id: string; made: string } {
  return {
    id: String(place + 1).padStart(32, '0'),
    made: `0000000000${String(1000 + place)}.000000.11111111111111111111111111111111`,
  };
}

/** What becomes of one item of the built-in checklist. */
export function gradedItem(
  itemId: string,
  { tests = {}, nameplate = {}, facts = {}, answer }: Given,
): ItemResult & { grades: string } {
  const grading = gradeRecord(
    builtIn,
    deepFreeze({
      route: 'whole' as const,
      facts,
      answers: answer === undefined ? {} : { [itemId]: answer },
      nameplate,
      tests: testsOf(tests),
    }),
  );
  const result = grading.items.find((one) => one.itemId === itemId);
  if (result === undefined) throw new Error(`no item ${itemId}`);
  return { ...result, grades: result.possible.join(' ') };
}

interface Given {
  tests?: Partial<LiveTests>;
  nameplate?: Nameplate;
  facts?: Record<string, string>;
  answer?: Answer;
}
