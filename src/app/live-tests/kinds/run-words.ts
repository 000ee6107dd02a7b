import { formatValue } from '../../../text/format-unit.ts';
import { duration, figureIn, roughIn } from '../../../text/live-tests/results/figures.ts';
import { runEndWords, runWords as say } from '../../../text/live-tests/run.ts';
import type { TestContext, TestValue } from '../test-kind.ts';

const S_PER_H = 3600;

type Run = TestValue<'run'>;

/** "Gentle · 97.3 Ah at 20 A · ended empty", as far as it is filled in. */
export function runSummary(run: Run): string {
  const end = run.end === undefined ? [] : [runEndWords[run.end]];
  return say.summary([...whatCame(run), ...end]);
}

/** Charge, else energy, else time, with the current where it is known. */
function whatCame(run: Run): string[] {
  const { chargeAh, energyWh, durationS, label } = run;
  const currentA = run.currentA ?? (chargeAh && durationS ? (chargeAh * S_PER_H) / durationS : undefined);
  const figure =
    chargeAh !== undefined
      ? figureIn(chargeAh, 'Ah')
      : energyWh !== undefined
        ? figureIn(energyWh, 'Wh')
        : durationS !== undefined
          ? duration(durationS)
          : null;
  const current = currentA === undefined ? null : figureIn(currentA, 'A');
  const what =
    figure === null ? (current === null ? [] : [current]) : [current === null ? figure : say.at(figure, current)];
  return label === undefined ? what : [label, ...what];
}

/** As shown: a logged mean of 200.001 A is 200 A. */
const SHOWN_DIGITS = 4;
/** Our choice: more than a mean current that is read off a display and rounded can be out. */
const CURRENT_OFF_FRAC = 0.05;
/** Our choice: no mean voltage of a whole run is so far from the nominal one. */
const VOLTAGE_OFF_FRAC = 0.2;

/** Calm words where a figure was read from a log, does not go with another, or goes beyond what the nameplate claims. */
export function runNotices(run: Run, { nameplate }: Pick<TestContext, 'nameplate'>): string[] {
  const { currentA, log } = run;
  const { continuousCurrentA } = nameplate;
  const said: string[] = [];
  if (log !== undefined) said.push(say.typedOver(say.lines(log.firstLine, log.lastLine)));
  if (
    currentA !== undefined &&
    continuousCurrentA !== undefined &&
    Number(currentA.toPrecision(SHOWN_DIGITS)) > continuousCurrentA
  ) {
    said.push(say.faster(figureIn(currentA, 'A'), formatValue(continuousCurrentA, 'A')));
  }
  return [...said, ...disagreements(run, nameplate.nominalVoltageV)];
}

/** A slip of a digit shows where two figures make a third. */
function disagreements({ chargeAh, energyWh, durationS, currentA }: Run, nominalV: number | undefined): string[] {
  const said: string[] = [];
  if (chargeAh !== undefined && durationS !== undefined && currentA !== undefined) {
    const givenA = (chargeAh * S_PER_H) / durationS;
    if (Math.abs(givenA - currentA) > CURRENT_OFF_FRAC * currentA) {
      said.push(say.otherCurrent(roughIn(givenA, 'A'), figureIn(currentA, 'A')));
    }
  }
  if (chargeAh !== undefined && energyWh !== undefined && nominalV !== undefined) {
    const meanV = energyWh / chargeAh;
    if (Math.abs(meanV - nominalV) > VOLTAGE_OFF_FRAC * nominalV) said.push(say.otherVoltage(roughIn(meanV, 'V')));
  }
  return said;
}
