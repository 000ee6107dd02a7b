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
  },
  needsTwo: 'it takes complete runs at two different currents',
  completeOf: (complete: number, all: number) => `${complete} of ${all}`,
  about1: 'the rate costs no charge',
  above1: 'a harder rate costs charge',
  below1: 'the harder run gave more, as a warm pack may',
  retentionFormula: 'retention = Q hard ÷ Q gentle, means of complete runs at the gentlest and the hardest current',
  exponentFormula: 'I^k · t constant, t = Q ÷ I; k = −slope of log t over log I, least squares',
};
