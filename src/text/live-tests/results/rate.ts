/** What a hard rate leaves of a gentle one. */
export const rateWords = {
  matter: 'What a hard rate leaves',
  retention: 'Rate retention',
  exponent: 'Peukert’s exponent',
  none: 'cannot be told',
  labels: {
    gentle: 'Gentle',
    hard: 'Hard',
    why: 'Why',
    complete: 'Complete runs',
    runs: 'Runs used',
    means: 'What it says',
    uncertainty: 'Uncertainty',
  },
  needsTwo: 'it takes complete runs at two different currents',
  completeOf: (complete: number, all: number) => `${complete} of ${all}`,
  about1: 'the rate costs no charge',
  cannotTell: 'the runs scatter too much to tell it from 1',
  above1: 'a harder rate costs charge',
  below1: 'the harder run gave more, as a warm pack may',
  scatter: 'from the scatter of the runs',
  /** Of an exponent that lies closer than its last digit. */
  under: (plusMinus: string) => `under ${plusMinus}`,
  noUncertainty: 'not given',
  needsThree: 'it takes complete runs at three different currents',
  scatterBasis:
    'the standard deviation of the slope, from the scatter of the runs; of so few, k = 2 covers less than 95 %; what is alike in all runs does not show',
  retentionFormula: 'retention = Q hard ÷ Q gentle, means of complete runs at the gentlest and the hardest current',
  exponentFormula: 'I^k · t constant, t = Q ÷ I; k = −slope of log t over log I, least squares',
};
