import { demoLogWords, wrenTestWords as say } from '../../../text/demo-tests.ts';
import type { ModelPack } from './cell-model.ts';
import { DEMO_METERS } from './demo-meters.ts';
import type { DemoTests } from './demo-tests.ts';

/** Invented cells, a little above what the label says. */
const PACK: ModelPack = { cellsAh: [103.9, 104.2, 104, 103.7, 104.3, 104.1, 103.8, 104.2], cellMohm: 0.42 };
const BEGAN = {
  chargedToV: 29.2,
  taperA: 2,
  restMin: 60,
  ambientDegC: 21,
  cellStartDegC: 22,
  sensePoint: 'packPosts',
} as const;

export const WREN_TESTS: DemoTests = {
  instruments: DEMO_METERS,
  logs: [
    {
      daysAgo: 22,
      instrument: 'bench',
      fileName: demoLogWords.fileName('wren', '20A'),
      title: 'WREN 24, sample 1, 20 A',
      pack: PACK,
      run: { currentA: 20, endVoltageV: 20, stepS: 10 },
      said: { ...BEGAN, label: say.gentle, openedBy: 'load', cellEndDegC: 25 },
    },
    {
      daysAgo: 20,
      instrument: 'bench',
      fileName: demoLogWords.fileName('wren', '100A'),
      title: 'WREN 24, sample 1, 100 A',
      pack: PACK,
      run: { currentA: 100, endVoltageV: 20, opensAfterS: 2460, stepS: 5 },
      said: { ...BEGAN, label: say.hard, openedBy: 'bms', cellEndDegC: 38, note: say.hardNote },
    },
  ],
  tests: [
    {
      subject: 'trip',
      daysAgo: 18,
      instrument: 'clamp',
      v: { currentA: 150, heldForS: 60, opened: false, heatSeen: false },
    },
    {
      subject: 'trip',
      daysAgo: 18,
      instrument: 'clamp',
      v: {
        currentA: 180,
        heldForS: 94,
        opened: true,
        heatSeen: true,
        coolingNeeded: true,
        recovery: 'cooling',
        recoveredAfterS: 900,
        note: say.heatTrip,
      },
    },
    {
      subject: 'cutOff',
      daysAgo: 19,
      instrument: 'meter',
      v: {
        kind: 'highVoltage',
        acted: true,
        by: 'bms',
        packVoltageV: 29,
        worstCellVoltageV: 3.64,
        recovery: 'byItself',
        recoveredAtV: 27.4,
      },
    },
    {
      subject: 'cutOff',
      daysAgo: 17,
      instrument: 'meter',
      v: {
        kind: 'lowVoltage',
        acted: true,
        by: 'bms',
        packVoltageV: 20.7,
        worstCellVoltageV: 2.53,
        wakeUp: 'anyCharger',
        recovery: 'chargerOn',
      },
    },
    {
      subject: 'cutOff',
      daysAgo: 19,
      instrument: 'bench',
      v: { kind: 'chargeCurrent', acted: true, by: 'bms', currentA: 60, afterS: 4 },
    },
    {
      subject: 'cutOff',
      daysAgo: 0,
      instrument: 'meter',
      v: {
        kind: 'coldCharge',
        acted: true,
        by: 'bms',
        method: 'cup',
        sensorDegC: -3,
        recovery: 'byItself',
        recoveredAtDegC: 2,
        sensorAfter: 'whole',
        note: say.coldNote,
      },
    },
    {
      subject: 'cutOff',
      daysAgo: 0,
      v: {
        kind: 'hotCharge',
        acted: false,
        method: 'cup',
        sensorDegC: 82,
        switchFitted: true,
        sensorAfter: 'loosened',
        note: say.hotNote,
      },
    },
    {
      subject: 'cutOff',
      daysAgo: 0,
      v: { kind: 'hotDischarge', acted: false, method: 'cup', sensorDegC: 82, switchFitted: true },
    },
    {
      subject: 'resistance',
      daysAgo: 20,
      instrument: 'bench',
      v: {
        method: 'twoStep',
        of: 'pack',
        firstA: 20,
        firstV: 26.14,
        secondA: 80,
        secondV: 25.81,
        afterS: 30,
        cellDegC: 23,
      },
    },
    {
      subject: 'lead',
      daysAgo: 0,
      v: {
        place: 'main',
        form: 'cable',
        label: say.leadLabel,
        way: 'printed',
        printedAwg: '4',
        insulationDegC: 105,
        insulation: 'pvc',
        metal: 'copper',
        lengthMm: 260,
      },
    },
    {
      subject: 'lead',
      daysAgo: 0,
      v: {
        place: 'link',
        form: 'bar',
        label: say.linkLabel,
        widthMm: 24,
        thicknessMm: 2,
        layers: 1,
        metal: 'copper',
        lengthMm: 72,
      },
    },
    {
      subject: 'joint',
      daysAgo: 20,
      instrument: 'meter',
      v: { place: 'terminal', currentA: 100, afterMin: 38, jointDegC: 38, aroundDegC: 22, dropMv: 4.2 },
    },
    { subject: 'drain', daysAgo: 16, instrument: 'meter', v: { currentMa: 9.5, mode: 'asleep' } },
    {
      subject: 'readOut',
      daysAgo: 16,
      v: {
        way: 'wireless',
        connected: true,
        rangeM: 8,
        accountNeeded: true,
        showsCells: true,
        showsTemperatures: true,
        note: say.readOutNote,
      },
    },
  ],
  cellSets: [
    {
      daysAgo: 0,
      instrument: 'meter',
      v: { state: 'rested', restedMin: 600, cellDegC: 20, resistanceBy: 'ac' },
      voltagesV: [3.297, 3.299, 3.301, 3.296, 3.3, 3.302, 3.298, 3.3],
      resistancesMohm: [0.24, 0.25, 0.24, 0.26, 0.25, 0.24, 0.25, 0.25],
      bmsVoltagesV: [3.298, 3.299, 3.303, 3.297, 3.3, 3.304, 3.299, 3.301],
    },
  ],
};
