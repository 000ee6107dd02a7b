import { CELL_STATES, type CellSet } from '../../../schema/live-tests/cell-set.ts';
import type { Named } from '../../../schema/live-tests/live-tests.ts';
import { cellBlocks } from '../../../sheet/model/live-tests/cell-blocks.ts';
import { cellsWords as say } from '../../../text/live-tests/cells.ts';
import { memberCount, memberParts, withoutMembers } from '../set-members.ts';
import type { TestKind, TestValue } from '../test-kind.ts';

type Typed = TestValue<'cellSet'>;

/** Under this a cell still settles. The same 30 min as for a rest before a run. */
const RESTED_MIN = 30;

export const cellsKind: TestKind<'cellSet'> = {
  id: 'cells',
  subject: 'cellSet',
  words: say,
  labels: say.labels,
  testsOf: ({ cellSets }) => cellSets.map((set) => withoutMembers<Named<CellSet>>(set, 'cells')),
  groups: [
    {
      lead: say.stateLead,
      fields: [
        { box: 'choice', key: 'state', choices: CELL_STATES.map((id) => ({ id, text: say.states[id] })) },
        { box: 'number', key: 'restedMin', unit: 'min', least: 'zero', when: ({ state }) => state === 'rested' },
        { box: 'number', key: 'loadA', unit: 'A', least: 'aboveZero', when: ({ state }) => state === 'underLoad' },
        { box: 'temperature', key: 'cellDegC' },
        {
          box: 'choice',
          key: 'resistanceBy',
          choices: (['ac', 'dc'] as const).map((id) => ({ id, text: say.by[id] })),
        },
      ],
      notices: cellsNotices,
    },
  ],
  summary(set) {
    const count = memberCount(set);
    const state = set.state === undefined ? '' : say.shortStates[set.state];
    return count === null ? state : say.summary(state, say.read(count));
  },
  results: (context, id) => cellBlocks(context, ...(id === null ? [] : [id])),
  deletedWith: (set) => memberParts(set).map((part) => ({ subject: 'cell', part })),
};

/** What a round in this state cannot settle. */
export function cellsNotices({ state, restedMin }: Typed): string[] {
  if (state === 'justEmptied') return [say.justEmptiedSettlesNothing];
  if (state === 'underLoad') return [say.underLoadSettlesNothing];
  return state === 'rested' && restedMin !== undefined && restedMin < RESTED_MIN ? [say.restShort] : [];
}
