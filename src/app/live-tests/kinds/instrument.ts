import { formatValue } from '../../../text/format-unit.ts';
import { instrumentWords as say } from '../../../text/live-tests/instrument.ts';
import type { TestKind } from '../test-kind.ts';

export const instrumentKind: TestKind<'instrument'> = {
  id: 'instrument',
  subject: 'instrument',
  words: say,
  labels: say.labels,
  standard: { day: false, instrument: false },
  testsOf: ({ instruments }) => instruments,
  groups: [
    { fields: [{ box: 'text', key: 'name' }] },
    {
      title: say.accuracy,
      lead: say.accuracyLead,
      fields: [
        { box: 'number', key: 'voltageReadingPct', unit: '%', least: 'zero' },
        { box: 'number', key: 'voltageAbsoluteV', unit: 'V', least: 'zero' },
        { box: 'number', key: 'currentReadingPct', unit: '%', least: 'zero' },
        { box: 'number', key: 'currentAbsoluteA', unit: 'A', least: 'zero' },
        { box: 'number', key: 'temperatureAbsoluteDegC', unit: '°C', least: 'zero' },
      ],
    },
  ],
  summary({ name, temperatureAbsoluteDegC, ...accuracy }) {
    const parts = [
      ...said(say.voltage, accuracy.voltageReadingPct, [accuracy.voltageAbsoluteV, 'V']),
      ...said(say.current, accuracy.currentReadingPct, [accuracy.currentAbsoluteA, 'A']),
      ...(temperatureAbsoluteDegC === undefined ? [] : [say.temperature(formatValue(temperatureAbsoluteDegC, '°C'))]),
    ];
    if (name === undefined) return parts.join(', ');
    return `${name}: ${parts.length === 0 ? say.noAccuracy : parts.join(', ')}`;
  },
};

function said(
  words: (parts: string) => string,
  readingPct: number | undefined,
  [absolute, unit]: [number | undefined, string],
): string[] {
  const parts = [
    ...(readingPct === undefined ? [] : [formatValue(readingPct, '%')]),
    ...(absolute === undefined ? [] : [formatValue(absolute, unit)]),
  ];
  return parts.length === 0 ? [] : [words(parts.join(say.and))];
}
