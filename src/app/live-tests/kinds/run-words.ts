import { formatValue } from '../../../text/format-unit.ts';
import { duration, figureIn } from '../../../text/live-tests/results/figures.ts';
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

/** Calm words where a figure was read from a log, or a current goes beyond what the nameplate claims. */
export function runNotices({ currentA, log }: Run, { nameplate }: Pick<TestContext, 'nameplate'>): string[] {
  const { continuousCurrentA } = nameplate;
  const said: string[] = [];
  if (log !== undefined) said.push(say.typedOver(say.lines(log.firstLine, log.lastLine)));
  if (currentA !== undefined && continuousCurrentA !== undefined && currentA > continuousCurrentA) {
    said.push(say.faster(figureIn(currentA, 'A'), formatValue(continuousCurrentA, 'A')));
  }
  return said;
}
