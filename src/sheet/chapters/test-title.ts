import type { LiveTests } from '../../schema/live-tests/live-tests.ts';
import { formatTyped } from '../../text/format-number.ts';
import { formatValue } from '../../text/format-unit.ts';
import { cutOffWords } from '../../text/live-tests/cut-off.ts';
import { leadWords } from '../../text/live-tests/lead.ts';
import { figureIn } from '../../text/live-tests/results/figures.ts';
import { markWords as say } from '../../text/shoot-clock.ts';
import { MARKED_TESTS, type MarkedTest } from './marked-tests.ts';

/** Name of one test with the one figure or word that tells it from its like; null where it is no longer there. */
export function testTitle({ subject, part }: { subject: string; part: string }, tests: LiveTests): string | null {
  const marked = MARKED_TESTS.find((one) => one === subject);
  if (marked === undefined) return null;
  const which = TELLING[marked](tests, part);
  if (which === null) return null;
  return which === '' ? say.tests[marked] : say.test(say.tests[marked], which);
}

/** By subject: what tells a test from its like, empty where nothing is filled in yet, null where there is no such test. */
const TELLING: { readonly [S in MarkedTest]: (tests: LiveTests, id: string) => string | null } = {
  run: ({ runs }, id) =>
    told(runs, id, ({ label, currentA }) => label ?? (currentA === undefined ? '' : figureIn(currentA, 'A'))),
  trip: ({ trips }, id) => told(trips, id, ({ currentA }) => amps(currentA)),
  cutOff: ({ cutOffs }, id) => told(cutOffs, id, ({ kind }) => cutOffWords.kinds[kind].toLowerCase()),
  cellSet: ({ cellSets }, id) => told(cellSets, id, ({ state }) => say.cellStates[state]),
  resistance: ({ resistances }, id) =>
    told(resistances, id, ({ of, cellNumber }) =>
      of === 'pack' || cellNumber === undefined ? '' : say.cell(formatTyped(cellNumber)),
    ),
  lead: ({ leads }, id) => told(leads, id, ({ label, place }) => label ?? leadWords.places[place].toLowerCase()),
  joint: ({ joints }, id) => told(joints, id, ({ label, currentA }) => label ?? amps(currentA)),
  drain: ({ drains }, id) => told(drains, id, ({ currentMa }) => formatValue(currentMa, 'mA')),
  parallelRun: ({ parallelRuns }, id) => told(parallelRuns, id, ({ currentA }) => amps(currentA)),
  readOut: ({ readOuts }, id) => told(readOuts, id, () => ''),
  cellMark: ({ cellMarks }, id) =>
    told(cellMarks, id, ({ cellNumber }) => (cellNumber === undefined ? '' : say.cell(formatTyped(cellNumber)))),
  ruler: ({ rulers }, id) => told(rulers, id, ({ label }) => label ?? ''),
};

function told<T extends { id: string }>(tests: readonly T[], id: string, words: (test: T) => string): string | null {
  const test = tests.find((one) => one.id === id);
  return test === undefined ? null : words(test);
}

function amps(currentA: number | undefined): string {
  return currentA === undefined ? '' : formatValue(currentA, 'A');
}
