import type { CellSetResult } from '../../../grading/live-tests/results.ts';
import { cellWords as say } from '../../../text/live-tests/results/cell.ts';
import { figure, figureIn } from '../../../text/live-tests/results/figures.ts';
import type { CalculationSource } from '../../../text/live-tests/results/sources.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Working } from '../sheet.ts';
import { workingOf } from './working-of.ts';

/** How the figures of one round were worked out; null of a round that gives none. */
export function workingOfCells({
  set,
  spread,
  voltageOutliers,
  restBands,
  resistance,
  bmsErrors,
}: CellSetResult): Working | null {
  const { formulas } = say;
  const areOutliersTold = voltageOutliers.ok || resistance?.outliers.ok === true;
  const steps: [boolean, string, CalculationSource[]][] = [
    [spread !== null, formulas.spread, ['definition']],
    [areOutliersTold, formulas.apart, ['robustZ', 'grubbs']],
    [restBands !== null, formulas.bands, ['restVoltage']],
    [bmsErrors.length > 0, formulas.bms, ['definition']],
    [resistance !== null && resistance.spreadFrac !== null, formulas.resistance, ['definition']],
  ];
  const taken = steps.filter(([isTaken]) => isTaken);
  return workingOf({
    formulas: taken.map(([, formula]) => formula),
    inputs: [
      ...readings(set, say.inputs.voltages, { read: (cell) => cell.voltageV, unit: 'V' }),
      ...readings(set, say.inputs.resistances, { read: (cell) => cell.resistanceMohm, unit: 'mΩ' }),
      ...readings(set, say.inputs.bms, { read: (cell) => cell.bmsVoltageV, unit: 'V' }),
    ],
    sources: taken.flatMap(([, , sources]) => sources),
  });
}

type Cell = CellSetResult['set']['cells'][number];

function readings(
  { cells }: CellSetResult['set'],
  label: string,
  { read, unit }: { read: (cell: Cell) => number | undefined; unit: string },
): Working['inputs'] {
  const parts = cells.flatMap((cell) => {
    const value = read(cell);
    return value === undefined ? [] : [{ number: cell.number, value }];
  });
  if (parts.length === 0) return [];
  const last = parts.length - 1;
  const words = parts.map(({ number, value }, place) =>
    say.input(number, place === last ? figureIn(value, unit) : figure(value)),
  );
  return [{ label, value: testWords.listed(words) }];
}
