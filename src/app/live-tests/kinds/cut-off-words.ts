import { cutOffLimit } from '../../../grading/live-tests/cut-off-limits.ts';
import type { CutOffKind } from '../../../schema/live-tests/cut-off.ts';
import type { LiveTests } from '../../../schema/live-tests/live-tests.ts';
import { formatTemperature, formatValue } from '../../../text/format-unit.ts';
import { cutOffWords as say } from '../../../text/live-tests/cut-off.ts';
import type { TestContext, TestValue } from '../test-kind.ts';

export type Trial = TestValue<'cutOff'>;

/** "High voltage: cut off at 3.71 V". */
export function cutOffSummary(trial: Trial, { units }: Pick<TestContext, 'units'>): string {
  const { kind, acted, worstCellVoltageV, packVoltageV, sensorDegC, currentA, by } = trial;
  if (kind === undefined) return '';
  const volts = worstCellVoltageV ?? packVoltageV;
  const amps = kind === 'chargeCurrent' ? currentA : undefined;
  const where =
    sensorDegC !== undefined
      ? formatTemperature(sensorDegC, units)
      : volts !== undefined
        ? formatValue(volts, 'V')
        : amps !== undefined
          ? formatValue(amps, 'A')
          : null;
  const title = say.kinds[kind];
  if (acted === undefined) return where === null ? title : say.summary(title, where);
  const what = acted
    ? where === null
      ? say.actedSomewhere
      : say.actedAt(where)
    : where === null
      ? say.notCut
      : say.reached(where);
  return [say.summary(title, what), acted && by === 'thermalSwitch' ? say.bySwitch : ''].filter(Boolean).join(', ');
}

/** With one trial on the screen only those of its kind are shown beneath it; null with none. */
export function kindsShown({ cutOffs }: Pick<LiveTests, 'cutOffs'>, id: string | null): CutOffKind[] | null {
  const shown = cutOffs.find((trial) => trial.id === id);
  return shown ? [shown.kind] : null;
}

/** Calm words once a trial is past where the checklist calls a cut-off too late, or above what the nameplate claims. */
export function cutOffNotices(trial: Trial, context: Pick<TestContext, 'nameplate' | 'units'>): string[] {
  return [...(trial.method === 'ambient' ? [say.withCells] : []), ...pastNotices(trial, context)];
}

function pastNotices(trial: Trial, { nameplate, units }: Pick<TestContext, 'nameplate' | 'units'>): string[] {
  const { kind, acted, currentA, sensorDegC } = trial;
  if (kind === undefined) return [];
  const claimA = nameplate.chargeCurrentA;
  if (kind === 'chargeCurrent') {
    const above = currentA !== undefined && claimA !== undefined && currentA > claimA;
    return above ? [say.aboveClaim(formatValue(currentA, 'A'), formatValue(claimA, 'A'))] : [];
  }
  if (acted === true) return [];
  const limit = cutOffLimit({ ...trial, kind, acted: false, made: '' }, nameplate);
  if (limit === null) return [];
  const upward = kind === 'highVoltage' || kind === 'hotCharge' || kind === 'hotDischarge';
  const isPast = (value: number, late: number) => (upward ? value >= late : value <= late);
  if (limit.of === 'sensor') {
    return sensorDegC !== undefined && isPast(sensorDegC, limit.lateDegC)
      ? [say.pastSensor(formatTemperature(sensorDegC, units), formatTemperature(limit.lateDegC, units))]
      : [];
  }
  if (limit.of === 'current') return [];
  const typedV = limit.of === 'cell' ? trial.worstCellVoltageV : trial.packVoltageV;
  return typedV !== undefined && isPast(typedV, limit.lateV)
    ? [say.pastVoltage(formatValue(typedV, 'V'), formatValue(limit.lateV, 'V'))]
    : [];
}
