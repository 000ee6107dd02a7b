/** Live tests: what running the closed pack shows. */
export const liveTestsWords = {
  title: 'Live tests',
  lead: 'What the closed pack gives, and what really protects it. Only within its nameplate, on a surface that cannot burn, never unattended. Leave open what you cannot run.',
  caution: 'Only within the nameplate, on a surface that cannot burn, never unattended.',
  tests: 'Tests',
  questions: 'What the tests show',
  questionsLead: 'Answered by a sentence, or worked out from what was typed above.',
  goOn: 'Go on',
  toMakeSafe: 'Go on: Make safe',
  toMakeSafeNow: 'Make safe',
  backToAll: 'All tests',
  correct: 'What was typed can still be corrected:',
  promised: 'Promised',
  delivered: 'Delivered',
  atLeast: (figure: string) => `at least ${figure}`,
  notPromised: 'not stated',
  notRun: 'no run yet',
  ofPromised: { charge: (share: string) => `${share} of the Ah`, energy: (share: string) => `${share} of the Wh` },
  shares: (shares: readonly string[]) => `${shares.join(', ')} promised`,
  atLeastNote: 'No run both began full and ended empty: more may be in it.',
  /** Beside the station: tests typed, and questions answered out of those asked. */
  standing: (tests: number, answered: number, asked: number) =>
    [tests === 0 ? '' : tests === 1 ? '1 test' : `${tests} tests`, asked === 0 ? '' : `${answered} of ${asked}`]
      .filter(Boolean)
      .join(' · '),
  sensorTests: 'Hot and cold sensor tests',
};
