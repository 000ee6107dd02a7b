/** Around a result of the live tests. */
export const resultWords = {
  results: 'What it comes to',
  working: 'How this was worked out',
  uncertainty: 'Uncertainty:',
  source: 'Source:',
  sources: (sources: readonly string[]) => sources.join('; '),
};
