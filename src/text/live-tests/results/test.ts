import { NO_BREAK } from '../../format-unit.ts';

/** What every result of a test may say. */
export const testWords = {
  titled: (parts: readonly string[]) => parts.join(' · '),
  numbered: (one: string, number: number) => `${one}${NO_BREAK}${number}`,
  listed: (parts: readonly string[]) => parts.join(', '),
  sentenced: (parts: readonly string[]) => parts.join('; '),
  notSaid: 'not said',
  atLeast: (figure: string) => `at least ${figure}`,
  fromTo: (from: string, to: string) => `${from} → ${to}`,
  yes: 'yes',
  no: 'no',
  labels: { instrument: 'Measured with', note: 'The tester notes', uncertainty: 'Uncertainty' },
  /** Said in place of the results of one matter. */
  outOfReach: (matter: string) =>
    `${matter}: could not be worked out, for a figure in it is out of all reach. It is kept as it was typed: correct it under Live tests.`,
  formulas: (formulas: readonly string[]) => formulas.join('; '),
};
