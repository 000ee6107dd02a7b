import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../../src/schema/check-entry.ts';
import { LIVE_TEST_SUBJECTS, type LiveTestSubject } from '../../../src/schema/live-tests/live-tests.ts';
import { entry } from '../../record/made-entries.ts';
import { type FieldKind, type FieldKindName, KINDS, oneOf } from './field-kinds.ts';
import { FULL_VALUES } from './full-values.ts';

type Fields = Readonly<Record<string, FieldKindName | FieldKind | 'nested'>>;

const common = { on: 'day', instrumentId: 'id', note: 'note', made: 'stamp' } as const;
const recovery = oneOf('byItself', 'loadOff', 'loadOn', 'chargerOff', 'chargerOn', 'button', 'cooling', 'didNot');

/** Every field and what it may hold; `nested`: nested-values.test.ts. */
const FIELDS: Readonly<Record<LiveTestSubject, Fields>> = {
  instrument: {
    name: 'line',
    voltageReadingPct: 'notNegative',
    voltageAbsoluteV: 'notNegative',
    currentReadingPct: 'notNegative',
    currentAbsoluteA: 'notNegative',
    temperatureAbsoluteDegC: 'notNegative',
    note: 'note',
    made: 'stamp',
  },
  run: {
    ...common,
    label: 'line',
    chargeAh: 'positive',
    energyWh: 'positive',
    durationS: 'positive',
    currentA: 'positive',
    meanVoltageV: 'positive',
    startVoltageV: 'notNegative',
    endVoltageV: 'notNegative',
    end: oneOf('lowVoltage', 'packDisconnect', 'stopped', 'taper', 'unclear'),
    openedBy: oneOf('bms', 'load', 'hand'),
    chargedToV: 'positive',
    taperA: 'notNegative',
    restMin: 'notNegative',
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
    currentA: 'positive',
    heldForS: 'notNegative',
    opened: 'yesNo',
    heatSeen: 'yesNo',
    coolingNeeded: 'yesNo',
    recovery,
    recoveredAfterS: 'notNegative',
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
    packVoltageV: 'notNegative',
    worstCellVoltageV: 'volts',
    sensorDegC: 'degC',
    currentA: 'positive',
    afterS: 'notNegative',
    method: oneOf('cup', 'icePack', 'warmAir', 'ambient'),
    switchFitted: 'yesNo',
    sensorAfter: oneOf('whole', 'loosened', 'melted'),
    recovery,
    recoveredAtV: 'notNegative',
    recoveredAtDegC: 'degC',
    wakeUp: oneOf('byItself', 'anyCharger', 'specialCharger', 'button', 'didNot'),
  },
  sensorGate: { passedAtMs: 'wholeFrom0', day: 'day', acknowledged: 'nested' },
  cellSet: {
    ...common,
    state: oneOf('rested', 'nearFull', 'justEmptied', 'underLoad'),
    restedMin: 'notNegative',
    loadA: 'positive',
    cellDegC: 'degC',
    resistanceBy: oneOf('ac', 'dc'),
  },
  cell: { voltageV: 'volts', resistanceMohm: 'positive', bmsVoltageV: 'volts' },
  resistance: {
    ...common,
    method: oneOf('twoStep', 'pulse'),
    of: oneOf('pack', 'cell'),
    cellNumber: 'wholeTo1000',
    firstA: 'notNegative',
    firstV: 'volts',
    secondA: 'notNegative',
    secondV: 'volts',
    afterS: 'notNegative',
    cellDegC: 'degC',
  },
  lead: {
    ...common,
    place: oneOf('main', 'link', 'sense', 'other'),
    form: oneOf('cable', 'bar'),
    label: 'line',
    way: oneOf('printed', 'bareStrands', 'overInsulation'),
    printedMm2: 'positive',
    printedAwg: 'awg',
    diameterMm: 'positive',
    insulationDegC: 'degC',
    insulation: oneOf('pvc', 'xlpe', 'epr', 'silicone'),
    count: 'wholeTo40',
    equal: 'yesNo',
    lengthMm: 'positive',
    aroundDegC: 'degC',
    widthMm: 'positive',
    thicknessMm: 'positive',
    layers: 'wholeTo100',
    metal: oneOf('copper', 'aluminium', 'nickel', 'steel', 'brass'),
    rulerId: 'id',
    byPhoto: 'nested',
  },
  joint: {
    ...common,
    place: oneOf('terminal', 'inside'),
    label: 'line',
    currentA: 'positive',
    afterMin: 'notNegative',
    jointDegC: 'degC',
    aroundDegC: 'degC',
    dropMv: 'notNegative',
  },
  drain: { ...common, currentMa: 'notNegative', mode: oneOf('awake', 'asleep', 'afterCutOff') },
  parallelRun: { ...common, of: oneOf('packs', 'strings'), currentA: 'positive' },
  parallelShare: { label: 'line', chargeAh: 'notNegative', highestA: 'notNegative' },
  readOut: {
    ...common,
    way: oneOf('wireless', 'cable', 'display'),
    connected: 'yesNo',
    rangeM: 'notNegative',
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
    offPlaneMm: 'notNegative',
    cameraMm: 'positive',
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
