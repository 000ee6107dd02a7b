import { describe, expect, it } from 'vitest';
import { cutOffSummary } from '../../../src/app/live-tests/kinds/cut-off-words.ts';
import { drainKind } from '../../../src/app/live-tests/kinds/drain.ts';
import { instrumentKind } from '../../../src/app/live-tests/kinds/instrument.ts';
import { jointKind } from '../../../src/app/live-tests/kinds/joint.ts';
import { leadKind } from '../../../src/app/live-tests/kinds/lead.ts';
import { readOutKind } from '../../../src/app/live-tests/kinds/read-out.ts';
import { resistanceKind } from '../../../src/app/live-tests/kinds/resistance.ts';
import { tidyAwg } from '../../../src/app/live-tests/kinds/tidy-awg.ts';
import { tripKind } from '../../../src/app/live-tests/kinds/trip.ts';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';

const metric = { nameplate: {}, tests: NO_LIVE_TESTS, units: 'metric' as const };
const imperial = { ...metric, units: 'imperial' as const };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a test in a line', () => {
  it.each([
    [tripKind.summary({ currentA: 220, heldForS: 4, opened: true }, metric), '220 A: opened after 4 s'],
    [
      tripKind.summary({ currentA: 800, heldForS: 90, opened: false, heatSeen: true }, metric),
      '800 A: carried for 90 s, did not open · heat seen',
    ],
    [tripKind.summary({ currentA: 220 }, metric), '220 A'],
    [tripKind.summary({ heldForS: 4 }, metric), ''],
    [
      cutOffSummary({ kind: 'highVoltage', acted: true, worstCellVoltageV: 3.71 }, metric),
      'High voltage: cut off at 3.71 V',
    ],
    [
      cutOffSummary({ kind: 'hotCharge', acted: true, by: 'thermalSwitch', sensorDegC: 75 }, metric),
      'Hot, charging: cut off at 75 °C, by a thermal switch',
    ],
    [
      cutOffSummary({ kind: 'coldCharge', acted: false, sensorDegC: -12 }, imperial),
      'Cold, charging: did not cut off, reached 10 °F',
    ],
    [cutOffSummary({ kind: 'chargeCurrent', acted: false }, metric), 'Charge current: did not cut off'],
    [
      resistanceKind.summary({ of: 'cell', cellNumber: 3, method: 'pulse', firstA: 0, secondA: 50 }, metric),
      'Cell 3 · one pulse · 0 A to 50 A',
    ],
    [leadKind.summary({ place: 'main', form: 'cable', printedAwg: '4', count: 2 }, metric), 'Main lead · 2 × AWG 4'],
    [
      leadKind.summary({ place: 'link', form: 'bar', widthMm: 20, thicknessMm: 2, layers: 3 }, metric),
      'Cell link · 3 × 20 mm × 2 mm',
    ],
    [jointKind.summary({ place: 'terminal', currentA: 100, jointDegC: 38 }, metric), 'Terminal · 38 °C at 100 A'],
    [drainKind.summary({ currentMa: 12, mode: 'asleep' }, metric), '12 mA, asleep'],
    [
      readOutKind.summary({ way: 'wireless', connected: true, rangeM: 8, accountNeeded: true }, metric),
      'Wireless · answers up to 8 m · account needed',
    ],
    [
      instrumentKind.summary({ name: 'Load 2', currentReadingPct: 0.5, currentAbsoluteA: 0.02 }, metric),
      'Load 2: A ± 0.5 % + 0.02 A',
    ],
    [instrumentKind.summary({ name: 'Load 2' }, metric), 'Load 2: accuracy not stated'],
  ])('reads “%s”', (found, expected) => {
    expect(plain(found)).toBe(expected);
  });

  it('is empty of a test with nothing in it, for every kind', () => {
    for (const kind of [tripKind, drainKind, jointKind, leadKind, readOutKind, resistanceKind]) {
      expect(kind.summary({}, metric), kind.id).toBe('');
    }
  });
});

it('a gauge is taken as people write it: AWG 10, 10 awg, 00 and 2 / 0', () => {
  expect(['AWG 10', '10 awg', '00', '2 / 0', '0'].map(tidyAwg)).toEqual(['10', '10', '2/0', '2/0', '0']);
});
