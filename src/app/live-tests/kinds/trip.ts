import { RECOVERIES } from '../../../schema/live-tests/trip.ts';
import { overcurrentBlocks } from '../../../sheet/model/live-tests/overcurrent-blocks.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { recoveryWords, tripWords as say } from '../../../text/live-tests/trip.ts';
import type { TestContext, TestKind, TestValue } from '../test-kind.ts';

/** DESIGN §6: over this only heat opens. Facts of the trade. */
const HEAT_ONLY_FROM_S = 60;

type Trip = TestValue<'trip'>;

export const tripKind: TestKind<'trip'> = {
  id: 'trip',
  subject: 'trip',
  words: say,
  labels: say.labels,
  testsOf: ({ trips }) => trips,
  groups: [
    {
      fields: [
        { box: 'number', key: 'currentA', unit: 'A', least: 'aboveZero' },
        { box: 'number', key: 'heldForS', unit: 's', least: 'zero' },
      ],
      notices: tripNotices,
    },
    {
      fields: [
        { box: 'yesNo', key: 'opened', yes: say.opened, no: say.notOpened },
        { box: 'yesNo', key: 'heatSeen' },
        { box: 'yesNo', key: 'short', hint: say.shortHint },
      ],
    },
    {
      title: say.afterwards,
      fields: [
        {
          box: 'choice',
          key: 'recovery',
          choices: RECOVERIES.filter((id) => id !== 'chargerOff' && id !== 'loadOn').map((id) => ({
            id,
            text: recoveryWords[id],
          })),
          when: ({ opened }) => opened === true,
        },
        {
          box: 'yesNo',
          key: 'coolingNeeded',
          when: ({ opened, recovery }) => opened === true && recovery !== 'cooling',
        },
        {
          box: 'number',
          key: 'recoveredAfterS',
          unit: 's',
          least: 'zero',
          when: ({ opened, recovery }) => opened === true && recovery !== 'didNot',
        },
      ],
    },
  ],
  results: (context) => overcurrentBlocks(context),
  summary({ currentA, heldForS, opened, heatSeen }) {
    if (currentA === undefined) return '';
    const time = heldForS === undefined ? null : formatValue(heldForS, 's');
    const what =
      opened === undefined
        ? (time ?? '')
        : opened
          ? time === null
            ? say.openedSometime
            : say.openedAfter(time)
          : time === null
            ? say.carried
            : say.carriedFor(time);
    const line = what === '' ? formatValue(currentA, 'A') : say.summary(formatValue(currentA, 'A'), what);
    return heatSeen === true ? `${line} · ${say.heat}` : line;
  },
};

/** Calm words where a trial goes beyond what the nameplate claims. */
export function tripNotices({ currentA, heldForS }: Trip, { nameplate }: Pick<TestContext, 'nameplate'>): string[] {
  if (currentA === undefined) return [];
  const { continuousCurrentA, peakCurrentA, peakForS } = nameplate;
  const typed = formatValue(currentA, 'A');
  const said: string[] = [];
  if (peakCurrentA !== undefined && currentA > peakCurrentA) {
    said.push(say.abovePeak(typed, formatValue(peakCurrentA, 'A')));
  } else if (continuousCurrentA !== undefined && currentA > continuousCurrentA) {
    said.push(say.aboveContinuous(typed, formatValue(continuousCurrentA, 'A')));
    if (heldForS !== undefined && peakForS !== undefined && heldForS > peakForS) {
      said.push(say.longerThanPeak(formatValue(heldForS, 's'), formatValue(peakForS, 's')));
    }
  }
  if (heldForS !== undefined && heldForS > HEAT_ONLY_FROM_S) said.push(say.longHold);
  return said;
}
