import type { CutOff } from '../../schema/live-tests/cut-off.ts';
import type { Derivation } from './derivation.ts';
import { exactly, type Figure, type Reading } from './figure.ts';
import { actedByBms, thresholdFigures } from './threshold.ts';

/**
 * At what sensor temperature the BMS ends charge and load; the later of the two counts, so while only one was tried the
 * cut may be later still. A thermal switch is no BMS: what it opened is a trial in which the BMS did not act. Who opened
 * may be either while nobody said, unless there is no switch.
 */
export const hot: Derivation = ({ tests }) => {
  const trials = tests.cutOffs.filter(({ kind }) => kind === 'hotCharge' || kind === 'hotDischarge');
  const mayBeSwitch = trials.every(({ switchFitted }) => switchFitted !== false);
  const isOpen = ({ acted, by }: CutOff) => acted && by === undefined && mayBeSwitch;
  const alternatives = alternativesOf(trials);
  if (alternatives.length === 0) return null;
  if (trials.some(isOpen)) {
    alternatives.push(
      ...alternativesOf(trials.map((trial) => (isOpen(trial) ? { ...trial, by: 'thermalSwitch' } : trial))),
    );
  }
  // A sensor that melted may have opened the path itself: at what it would have cut is then not known.
  const melted = trials.some(({ acted, sensorAfter }) => acted && sensorAfter === 'melted');
  return melted ? { alternatives, orWorse: true } : { alternatives };
};

/** None while nothing that was tried has its temperature noted. */
function alternativesOf(trials: readonly CutOff[]): Reading[][] {
  const figures = (['hotCharge', 'hotDischarge'] as const).map((kind) =>
    thresholdFigures(
      trials.flatMap((trial) => (trial.kind === kind ? limitOf(trial) : [])),
      'higher',
    ),
  );
  const known = figures.flat();
  if (known.length === 0) return [];
  const later = figures.every((list) => list.length > 0) ? known : known.map(orLater);
  return switchCases(trials).map((name) => later.map((figure): Reading => ({ case: name, figure })));
}

function orLater({ low, open }: Figure): Figure {
  return { low, high: Infinity, ...(open === undefined ? {} : { open }) };
}

function limitOf(trial: CutOff): { acted: boolean; at: Figure }[] {
  const { sensorDegC } = trial;
  return sensorDegC === undefined ? [] : [{ acted: actedByBms(trial), at: exactly(sensorDegC) }];
}

/** Whether a thermal switch is fitted; both while nobody has said, or one trial says yes and another no. */
function switchCases(trials: readonly CutOff[]): ('withSwitch' | 'withoutSwitch')[] {
  if (trials.some(({ by }) => by === 'thermalSwitch')) return ['withSwitch'];
  const fitted = trials.some(({ switchFitted }) => switchFitted === true);
  const notFitted = trials.some(({ switchFitted }) => switchFitted === false);
  if (fitted !== notFitted) return fitted ? ['withSwitch'] : ['withoutSwitch'];
  return ['withSwitch', 'withoutSwitch'];
}
