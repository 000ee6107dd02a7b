import { jointBlocks } from '../../../sheet/model/live-tests/joint-blocks.ts';
import { formatTemperature, formatValue } from '../../../text/format-unit.ts';
import { jointWords as say } from '../../../text/live-tests/joint.ts';
import type { TestContext, TestKind, TestValue } from '../test-kind.ts';

type Joint = TestValue<'joint'>;

export const jointKind: TestKind<'joint'> = {
  id: 'joint',
  subject: 'joint',
  words: say,
  labels: say.labels,
  testsOf: ({ joints }) => joints,
  groups: [
    {
      fields: [
        {
          box: 'choice',
          key: 'place',
          choices: (['terminal', 'inside'] as const).map((id) => ({ id, text: say.places[id] })),
        },
        { box: 'text', key: 'label' },
        { box: 'number', key: 'currentA', unit: 'A', least: 'aboveZero' },
        { box: 'number', key: 'afterMin', unit: 'min', least: 'zero' },
        { box: 'temperature', key: 'jointDegC' },
        { box: 'temperature', key: 'aroundDegC' },
        { box: 'number', key: 'dropMv', unit: 'mV', least: 'zero' },
      ],
      notices: jointNotices,
    },
  ],
  summary({ place, label, currentA, jointDegC, dropMv }, { units }) {
    const name = label ?? (place === undefined ? undefined : say.places[place]);
    const found = [
      ...(jointDegC === undefined ? [] : [formatTemperature(jointDegC, units)]),
      ...(dropMv === undefined ? [] : [formatValue(dropMv, 'mV')]),
    ].join(', ');
    const at = found === '' || currentA === undefined ? found : say.at(found, formatValue(currentA, 'A'));
    return [name, at].filter(Boolean).join(' · ');
  },
  results: (context, id) => jointBlocks(context, ...(id === null ? [] : [id])),
};

export function jointNotices(
  { currentA, jointDegC, aroundDegC }: Joint,
  { nameplate }: Pick<TestContext, 'nameplate'>,
): string[] {
  const claimA = nameplate.continuousCurrentA;
  const above = currentA !== undefined && claimA !== undefined && currentA > claimA;
  const colder = jointDegC !== undefined && aroundDegC !== undefined && jointDegC < aroundDegC;
  return [
    ...(above ? [say.aboveContinuous(formatValue(currentA, 'A'), formatValue(claimA, 'A'))] : []),
    ...(colder ? [say.colder] : []),
  ];
}
