import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../../src/schema/check-entry.ts';
import { LIVE_TEST_SUBJECTS, type LiveTestSubject } from '../../../src/schema/live-tests/live-tests.ts';
import { entry } from '../../record/made-entries.ts';
import { above0, type FieldKind, type FieldKindName, from0, KINDS, oneOf } from './field-kinds.ts';
import { FULL_VALUES } from './full-values.ts';

type Fields = Readonly<Record<string, FieldKindName | FieldKind | 'nested'>>;

const common = { on: 'day', instrumentId: 'id', note: 'note', made: 'stamp' } as const;
const recovery = oneOf('byItself', 'loadOff', 'loadOn', 'chargerOff', 'chargerOn', 'button', 'cooling', 'didNot');

/** Every field and what it may hold; `nested`: nested-values.test.ts. */
const FIELDS: Readonly<Record<LiveTestSubject, Fields>> = {
  instrument: {
    name: 'line',
    voltageReadingPct: from0(100),
    voltageAbsoluteV: from0(2_000),
    currentReadingPct: from0(100),
    currentAbsoluteA: from0(100_000),
    temperatureAbsoluteDegC: from0(1_500),
    note: 'note',
    made: 'stamp',
  },
  run: {
    ...common,
    label: 'line',
    chargeAh: above0(1_000_000),
    energyWh: above0(1e9),
    durationS: above0(1e9),
    currentA: above0(100_000),
    meanVoltageV: above0(100_000),
    startVoltageV: from0(100_000),
    endVoltageV: from0(100_000),
    end: oneOf('lowVoltage', 'packDisconnect', 'stopped', 'taper', 'unclear'),
    openedBy: oneOf('bms', 'load', 'hand'),
    chargedToV: above0(2_000),
    taperA: from0(100_000),
    restMin: from0(1e7),
    ambientDegC: 'degC',
    cellStartDegC: 'degC',
    cellEndDegC: 'degC',
    sensePoint: oneOf('packPosts', 'loadEnd', 'cells'),
    log: 'nested',
    curve: 'nested',
    evidence: 'nested',
  },
  log: { name: 'line', byteCount: 'wholeFrom1', rowCount: 'wholeFrom0', instrumentId: 'id', made: 'stamp' },
  trip: {
    ...common,
    currentA: above0(100_000),
    heldForS: from0(1e9),
    opened: 'yesNo',
    short: 'yesNo',
    heatSeen: 'yesNo',
    coolingNeeded: 'yesNo',
    recovery,
    recoveredAfterS: from0(1e9),
  },
  cutOff: {
    ...common,
    kind: oneOf(
      'highVoltage',
      'lowVoltage',
      'chargeCurrent',
      'coldCharge',
      'coldDischarge',
      'hotCharge',
      'hotDischarge',
    ),
    acted: 'yesNo',
    by: oneOf('bms', 'thermalSwitch'),
    packVoltageV: from0(2_000),
    worstCellVoltageV: 'volts',
    sensorDegC: 'degC',
    currentA: above0(100_000),
    afterS: from0(1e9),
    method: oneOf('cup', 'icePack', 'warmAir', 'ambient'),
    switchFitted: 'yesNo',
    sensorAfter: oneOf('whole', 'loosened', 'melted'),
    recovery,
    recoveredAtV: from0(2_000),
    recoveredAtDegC: 'degC',
    wakeUp: oneOf('byItself', 'anyCharger', 'specialCharger', 'button', 'didNot'),
  },
  sensorGate: { passedAtMs: 'moment', day: 'day', acknowledged: 'nested' },
  cellSet: {
    ...common,
    state: oneOf('rested', 'nearFull', 'justEmptied', 'underLoad'),
    restedMin: from0(1e7),
    loadA: above0(100_000),
    cellDegC: 'degC',
    resistanceBy: oneOf('ac', 'dc'),
  },
  cell: { voltageV: 'volts', resistanceMohm: above0(1e9), bmsVoltageV: 'volts' },
  resistance: {
    ...common,
    method: oneOf('twoStep', 'pulse'),
    of: oneOf('pack', 'cell'),
    cellNumber: 'wholeTo1000',
    firstA: from0(100_000),
    firstV: 'volts',
    secondA: from0(100_000),
    secondV: 'volts',
    afterS: from0(1e9),
    cellDegC: 'degC',
  },
  lead: {
    ...common,
    place: oneOf('main', 'link', 'sense', 'other'),
    form: oneOf('cable', 'bar'),
    label: 'line',
    way: oneOf('printed', 'bareStrands', 'overInsulation'),
    printedMm2: above0(100_000),
    printedAwg: 'awg',
    diameterMm: above0(100_000),
    insulationDegC: 'degC',
    insulation: oneOf('pvc', 'xlpe', 'epr', 'silicone'),
    count: 'wholeTo40',
    equal: 'yesNo',
    lengthMm: above0(100_000),
    aroundDegC: 'degC',
    widthMm: above0(100_000),
    thicknessMm: above0(100_000),
    layers: 'wholeTo100',
    metal: oneOf('copper', 'aluminium', 'nickel', 'steel', 'brass'),
    rulerId: 'id',
    byPhoto: 'nested',
  },
  joint: {
    ...common,
    place: oneOf('terminal', 'inside'),
    label: 'line',
    currentA: above0(100_000),
    afterMin: from0(1e7),
    jointDegC: 'degC',
    aroundDegC: 'degC',
    dropMv: from0(2_000_000),
  },
  drain: { ...common, currentMa: from0(1_000_000), mode: oneOf('awake', 'asleep', 'afterCutOff') },
  parallelRun: { ...common, of: oneOf('packs', 'strings'), currentA: above0(100_000) },
  parallelShare: { label: 'line', chargeAh: from0(1_000_000), highestA: from0(100_000) },
  readOut: {
    ...common,
    way: oneOf('wireless', 'cable', 'display'),
    connected: 'yesNo',
    rangeM: from0(100_000),
    accountNeeded: 'yesNo',
    worksOffline: 'yesNo',
    showsCells: 'yesNo',
    showsTemperatures: 'yesNo',
  },
  cellMark: {
    text: 'markText',
    read: oneOf('photo', 'typed'),
    symbology: 'symbology',
    cellNumber: 'wholeTo1000',
    photoId: 'hash',
    note: 'note',
    made: 'stamp',
  },
  ruler: {
    photoId: 'hash',
    corners: 'nested',
    from: 'nested',
    to: 'nested',
    label: 'line',
    offPlaneMm: from0(100_000),
    cameraMm: above0(100_000),
    made: 'stamp',
  },
};

interface Tried {
  subject: LiveTestSubject;
  field: string;
  kind: FieldKind;
}

const TRIED = (Object.entries(FIELDS) as [LiveTestSubject, Fields][]).flatMap(([subject, fields]) =>
  Object.entries(fields).flatMap(([field, kind]): [string, Tried][] => {
    if (kind === 'nested') return [];
    return [[`${subject}.${field}`, { subject, field, kind: typeof kind === 'string' ? KINDS[kind] : kind }]];
  }),
);

function checkOf({ subject, field }: Tried, given: unknown) {
  const { part, value } = FULL_VALUES[subject];
  return checkEntry(entry(subject, part, { ...value, [field]: given }));
}

describe('fields of the live tests', () => {
  it('are all tried here or as nested ones: 0 left out of 17 subjects', () => {
    for (const [subject, fields] of Object.entries(FIELDS)) {
      const known = Object.keys(LIVE_TEST_SUBJECTS[subject as LiveTestSubject].value.entries);
      expect(Object.keys(fields).sort()).toEqual(known.sort());
    }
    expect(Object.keys(FIELDS)).toHaveLength(17);
  });

  it.each(TRIED)('%s takes what lies just inside its bounds', (_, tried) => {
    for (const given of tried.kind.takes) {
      const check = checkOf(tried, given);
      expect(check.ok ? [] : [given, check.reason]).toEqual([]);
    }
  });

  it.each(TRIED)('%s refuses what lies just outside, naming it', (_, tried) => {
    expect(tried.kind.refuses.length).toBeGreaterThan(0);
    for (const [given, reason] of tried.kind.refuses) {
      expect(checkOf(tried, given)).toEqual({ ok: false, reason: `${tried.field}: ${reason}` });
    }
  });
});
