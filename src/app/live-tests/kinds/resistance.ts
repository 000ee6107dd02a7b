import { resistanceBlocks } from '../../../sheet/model/live-tests/resistance-blocks.ts';
import { formatTyped } from '../../../text/format-number.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { resistanceWords as say } from '../../../text/live-tests/resistance.ts';
import type { TestContext, TestKind, TestValue } from '../test-kind.ts';

type Resistance = TestValue<'resistance'>;
const isPulse = ({ method }: Resistance) => method === 'pulse';

export const resistanceKind: TestKind<'resistance'> = {
  id: 'resistance',
  subject: 'resistance',
  words: say,
  labels: say.labels,
  testsOf: ({ resistances }) => resistances,
  groups: [
    {
      fields: [
        {
          box: 'choice',
          key: 'method',
          choices: (['twoStep', 'pulse'] as const).map((id) => ({ id, text: say.methods[id] })),
        },
        { box: 'choice', key: 'of', choices: (['pack', 'cell'] as const).map((id) => ({ id, text: say.of[id] })) },
        {
          box: 'number',
          key: 'cellNumber',
          unit: '',
          least: 'aboveZero',
          whole: true,
          when: ({ of }) => of === 'cell',
        },
      ],
    },
    {
      fields: [
        {
          box: 'number',
          key: 'firstA',
          unit: 'A',
          least: 'zero',
          label: (test) => (isPulse(test) ? say.beforeA : say.labels.firstA),
        },
        {
          box: 'number',
          key: 'firstV',
          unit: 'V',
          least: 'any',
          label: (test) => (isPulse(test) ? say.beforeV : say.labels.firstV),
        },
        {
          box: 'number',
          key: 'secondA',
          unit: 'A',
          least: 'zero',
          label: (test) => (isPulse(test) ? say.pulseA : say.labels.secondA),
        },
        {
          box: 'number',
          key: 'secondV',
          unit: 'V',
          least: 'any',
          label: (test) => (isPulse(test) ? say.pulseV : say.labels.secondV),
        },
      ],
      notices: resistanceNotices,
    },
    {
      title: say.surroundings,
      fields: [
        { box: 'number', key: 'afterS', unit: 's', least: 'zero' },
        { box: 'temperature', key: 'cellDegC' },
      ],
    },
  ],
  summary({ of, cellNumber, method, firstA, secondA }) {
    const which = of === 'cell' && cellNumber !== undefined ? say.cell(formatTyped(cellNumber)) : of && say.of[of];
    const step =
      firstA === undefined || secondA === undefined
        ? undefined
        : say.step(formatValue(firstA, 'A'), formatValue(secondA, 'A'));
    return [which, method && say.methods[method].toLowerCase(), step].filter(Boolean).join(' · ');
  },
  results: (context, id) => resistanceBlocks(context, ...(id === null ? [] : [id])),
};

export function resistanceNotices(
  { firstA = 0, secondA = 0 }: Resistance,
  { nameplate }: Pick<TestContext, 'nameplate'>,
): string[] {
  const claimA = nameplate.continuousCurrentA;
  const typedA = Math.max(firstA, secondA);
  if (claimA === undefined || typedA <= claimA) return [];
  return [say.aboveContinuous(formatValue(typedA, 'A'), formatValue(claimA, 'A'))];
}
