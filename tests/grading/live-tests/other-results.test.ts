import { describe, expect, it } from 'vitest';
import { cellMarkResults } from '../../../src/grading/live-tests/cell-mark-results.ts';
import { drainResults } from '../../../src/grading/live-tests/drain-result.ts';
import { jointResults } from '../../../src/grading/live-tests/joint-result.ts';
import { parallelResults } from '../../../src/grading/live-tests/parallel-result.ts';
import { resistanceResults } from '../../../src/grading/live-tests/resistance-result.ts';
import { rulerResults } from '../../../src/grading/live-tests/ruler-results.ts';
import { entry, PHOTO, photoValue } from '../../record/made-entries.ts';
import { member, packOf, test } from './tested-pack.ts';

describe('DC resistance', () => {
  const TWO_STEP = { method: 'twoStep', of: 'pack', firstA: 20, firstV: 13.2, secondA: 100, secondV: 13.0 };
  const outcome = (value: object, plate: object = { cellsInSeries: 4 }) =>
    resistanceResults(packOf(plate, test('resistance', 1, value)))[0]?.outcome;

  it('is 2.5 mΩ for 0.2 V over 80 A, after 1 s', () => {
    const found = outcome({ ...TWO_STEP, afterS: 1 });
    expect(found).toMatchObject({ ok: true, timeS: 1 });
    expect(found?.ok ? found.resistanceMohm : null).toBeCloseTo(2.5, 9);
  });

  it('is 1 mΩ for a pulse of 50 A that takes 50 mV off a cell', () => {
    const pulse = { method: 'pulse', of: 'cell', firstA: 0, firstV: 3.3, secondA: 50, secondV: 3.25 };
    const found = outcome({ ...pulse, afterS: 10 }, {});
    expect(found?.ok ? found.resistanceMohm : null).toBeCloseTo(1, 9);
    expect(outcome(pulse, {})).toBeNull();
    expect(outcome({ ...pulse, afterS: 0 }, {})).toBeNull();
  });

  it('is refused near full: four cells at 13.9 V before 20 A', () => {
    expect(outcome({ ...TWO_STEP, firstV: 13.9, secondV: 13.7 })).toEqual({ ok: false, because: 'nearFull' });
  });

  it('cannot be told with a reading missing, or of a pack of unknown cells', () => {
    const { secondV: _, ...missing } = TWO_STEP;
    expect(outcome(missing)).toBeNull();
    expect(outcome(TWO_STEP, {})).toBeNull();
  });
});

describe('joints', () => {
  const joint = (value: object, plate: object = { continuousCurrentA: 100 }) =>
    jointResults(packOf(plate, test('joint', 1, { place: 'terminal', ...value })))[0];

  it('15 K at 50 A are 60 K at 100 A, and 5 mV at 50 A are 100 µΩ', () => {
    expect(joint({ currentA: 50, jointDegC: 40, aroundDegC: 25, dropMv: 5 })).toMatchObject({
      riseK: 15,
      ratedA: 100,
      riseAtRatedK: 60,
      resistanceMicroohm: 100,
    });
  });

  it('cannot be carried over without current or claim, or where the joint was the colder one', () => {
    const warm = { jointDegC: 40, aroundDegC: 25 };
    expect(joint(warm)).toMatchObject({ riseK: 15, riseAtRatedK: null, resistanceMicroohm: null });
    expect(joint({ ...warm, currentA: 50 }, {})).toMatchObject({ ratedA: null, riseAtRatedK: null });
    const cold = joint({ currentA: 50, jointDegC: 24, aroundDegC: 25 });
    expect(cold).toMatchObject({ riseK: -1, riseAtRatedK: null });
    expect(joint({ currentA: 50, jointDegC: 40 })).toMatchObject({ riseK: null, riseAtRatedK: null });
  });
});

describe('standby', () => {
  const drain = (currentMa: number, plate: object) => drainResults(packOf(plate, test('drain', 1, { currentMa })))[0];

  it('of 10 mA takes 0.24 Ah a day and 416.7 days to empty 100 Ah', () => {
    const found = drain(10, { ratedCapacityAh: 100 });
    expect(found?.drainAhPerDay).toBeCloseTo(0.24, 12);
    expect(found?.daysToFlat).toBeCloseTo(100 / 0.24, 9);
  });

  it('of unknown capacity takes 0.24 Ah a day, for nobody knows how long; of 0 mA never', () => {
    expect(drain(10, {})).toMatchObject({ daysToFlat: null, capacityAh: null });
    expect(drain(10, {})?.drainAhPerDay).toBeCloseTo(0.24, 12);
    expect(drain(0, { ratedCapacityAh: 100 })).toMatchObject({ drainAhPerDay: 0, daysToFlat: null });
  });
});

describe('parallel runs', () => {
  const sharing = (...charges: (number | null)[]) =>
    parallelResults(
      packOf(
        {},
        test('parallelRun', 1, { of: 'packs' }),
        ...charges.map((chargeAh, at) =>
          member('parallelShare', 1, { number: at + 1, ...(chargeAh === null ? {} : { chargeAh }) }),
        ),
      ),
    )[0]?.sharing;

  it('of 55 and 45 Ah shared 55 to 45 %, 10 % off an equal share', () => {
    const found = sharing(55, 45);
    expect(found?.shares).toEqual([
      { number: 1, shareFrac: 0.55 },
      { number: 2, shareFrac: 0.45 },
    ]);
    expect(found?.worstDivergenceFrac).toBeCloseTo(0.1, 12);
  });

  it('cannot be told of one, of one and an unread one, or where nothing came', () => {
    expect([sharing(), sharing(55), sharing(55, null), sharing(55, 45, null), sharing(0, 0)]).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('cell codes', () => {
  const code = (text: string) => cellMarkResults(packOf({}, test('cellMark', 1, { text, read: 'typed' })))[0];

  it('07HCBC1P22G06AC700002596 is an LFP cell of 31 July 2022, serial 0002596 (as read off a reseller’s page)', () => {
    const found = code('07HCBC1P22G0\n6AC700002596');
    expect(found?.mark.text).toBe('07HCBC1P22G0\n6AC700002596');
    expect(found?.code).toMatchObject({ ok: true, maker: '07H', product: 'cell', chemistry: 'lfp', serial: '0002596' });
    expect(found?.code).toMatchObject({ date: { raw: 'C70', year: 2022, month: 7, day: 31 } });
  });

  it('of 5 characters is refused and kept', () => {
    expect(code('07HCB')).toMatchObject({ mark: { text: '07HCB' }, code: { ok: false, because: 'wrongLength' } });
  });
});

describe('photo rulers', () => {
  /** A card seen straight on, 10 px to the millimetre, on a photo of 2000 by 2000 px; the distance is 500 px. */
  const RULER = {
    photoId: PHOTO,
    corners: [
      [0.1, 0.1],
      [0.528, 0.1],
      [0.528, 0.3699],
      [0.1, 0.3699],
    ],
    from: [0.1, 0.5],
    to: [0.35, 0.5],
  };
  const photo = entry('photo', PHOTO, { ...photoValue(), widthPx: 2000, heightPx: 2000 });
  const distance = (value: object, ...more: (typeof photo)[]) =>
    rulerResults(packOf({}, test('ruler', 1, value), ...more))[0]?.distance;

  it('measure 50 mm, of which 10 mm off the plane at 300 mm make 1.67 mm unsure', () => {
    const found = distance({ ...RULER, offPlaneMm: 10, cameraMm: 300 }, photo);
    expect(found?.distanceMm).toBeCloseTo(50, 6);
    expect(found?.offPlaneMm).toBeCloseTo(50 / 30, 6);
    expect(found?.uncertaintyMm).toBeGreaterThan(50 / 30);
  });

  it('measure 50 mm without saying how sure where the plane was not noted', () => {
    const found = distance(RULER, photo);
    expect(found?.distanceMm).toBeCloseTo(50, 6);
    expect(found).toMatchObject({ offPlaneMm: null, uncertaintyMm: null });
  });

  it('measure nothing without the photo, or by four corners in a row', () => {
    expect(distance({ ...RULER, offPlaneMm: 0 })).toBeNull();
    const inRow = { ...RULER, corners: [[0.1, 0.1], [0.2, 0.1], [0.3, 0.1], [0.4, 0.1]] }; // biome-ignore format: one line
    expect(distance(inRow, photo)).toBeNull();
  });
});
