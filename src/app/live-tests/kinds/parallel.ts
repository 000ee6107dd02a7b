import type { Named } from '../../../schema/live-tests/live-tests.ts';
import type { ParallelRun } from '../../../schema/live-tests/parallel-run.ts';
import { parallelBlocks } from '../../../sheet/model/live-tests/parallel-blocks.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { parallelWords as say } from '../../../text/live-tests/parallel.ts';
import { memberParts, withoutMembers } from '../set-members.ts';
import type { TestKind } from '../test-kind.ts';

export const parallelKind: TestKind<'parallelRun'> = {
  id: 'parallel',
  subject: 'parallelRun',
  words: say,
  labels: say.labels,
  testsOf: ({ parallelRuns }) => parallelRuns.map((run) => withoutMembers<Named<ParallelRun>>(run, 'shares')),
  groups: [
    {
      fields: [
        {
          box: 'choice',
          key: 'of',
          choices: (['packs', 'strings'] as const).map((id) => ({ id, text: say.of[id] })),
        },
        { box: 'number', key: 'currentA', unit: 'A', least: 'aboveZero' },
      ],
    },
  ],
  summary({ of, currentA }) {
    const current = currentA === undefined ? '' : formatValue(currentA, 'A');
    return [of === undefined ? '' : say.of[of], current].filter(Boolean).join(' · ');
  },
  results: (context, id) => parallelBlocks(context, ...(id === null ? [] : [id])),
  deletedWith: (run) => memberParts(run).map((part) => ({ subject: 'parallelShare', part })),
};
