import type { RetestOf } from '../schema/closing.ts';

/** What changed since an earlier sample: on its own screen and on the Sheet. */
export const sinceWords = {
  title: (label: string) => `What changed since ${label}`,
  link: (label: string) => `What changed since ${label}`,
  opening: 'Reading both records …',
  earlierUnnamed: 'the earlier pack',
  toEarlier: (label: string) => `Open ${label}`,
  toSheet: 'Sheet of this pack',
  lead: {
    sample: (label: string) => `Another sample of the product. The earlier one is ${label}.`,
    productRevision: (label: string) => `A new revision of the product. The earlier one is ${label}.`,
  } satisfies Record<RetestOf['kind'], (label: string) => string>,
  notHere: {
    absent: (label: string) =>
      `The record of ${label} is not on this phone, so nothing can be set beside this one. A bundle restored in Keep brings it back.`,
    noDefinition: (label: string) =>
      `The checklist that ${label} is graded by is not on this phone, so nothing can be set beside this one. The bundle it came from brings it back.`,
  },

  both: (was: string, now: string) => `${was} then, ${now} now`,
  empty: 'left empty',

  scores: {
    subhead: 'Scores and verdicts',
    score: { was: 'Score then', now: 'Score now' },
    verdict: { was: 'Verdict then', now: 'Verdict now' },
    by: (route: string, settled: string, version: string) => `${route}, ${settled}, checklist ${version}`,
    settled: (settled: boolean) => (settled ? 'settled' : 'not settled'),
    withheld: 'withheld',
    nothing: 'nothing to score',
    apart: {
      routes:
        'One took the short route, one the whole. The two scores answer different questions and are not compared.',
      versions: (was: string, now: string) =>
        `Graded by checklists ${was} and ${now}, which do not ask the same. The two scores are not compared as one.`,
      checklists: (was: string, now: string) =>
        `Graded by different checklists, ${was} and ${now}. Neither scores nor items are compared.`,
    },
    carryOver:
      'Both can be compared once they are graded by one version: carry over the one on the older, on its own screen or in Keep.',
    went: {
      higher: 'The score is higher than it was.',
      lower: 'The score is lower than it was.',
      same: 'The score is the same.',
      cannotTell: 'The two ranges overlap: which score is higher cannot be told yet.',
    },
  },

  items: {
    appeared: 'New',
    worse: 'Worse',
    better: 'Better',
    foundBoth: 'Found both times, which is worse cannot be told',
    gone: 'Gone',
    notLookedAgain: 'Found then, not looked at again',
    reworded: 'its sentences were other ones then',
    none: 'Of the items that both records ask, none is new, worse, better or gone.',
    wasOpen: (why: string) => `not settled then (${why})`,
    isOpen: (why: string) => `open now (${why})`,
    isNow: (now: string) => `${now} now`,
    change: (now: string, was: string) => `${now}, ${was}`,
    wasThen: (was: string) => `${was} then`,
    counts: (compared: number) => `${compared} ${compared === 1 ? 'item is' : 'items are'} asked by both records.`,
    same: (count: number) => `${count} the same.`,
    appliesToOne: (count: number) => `${count} ${count === 1 ? 'applies' : 'apply'} to one of the two packs only.`,
    open: (count: number) => `${count} not settled in one or both, and found in neither.`,
    onlyThen: (count: number) => `${count} asked then only.`,
    onlyNow: (count: number) => `${count} asked now only.`,
  },

  figures: {
    subhead: 'Delivered',
    labels: { chargeAh: 'Capacity', energyWh: 'Energy', costPerKwh: 'Cost per kWh' },
    notMeasured: 'not measured',
    noCost: 'not known',
    uncertaintyThen: (uncertainty: string) => `${uncertainty} then`,
    uncertaintyNow: (uncertainty: string) => `${uncertainty} now`,
    independent: 'The two are taken as measured apart: with one meter for both the difference is surer than stated.',
    tells: {
      more: (difference: string) => `${difference}: more`,
      less: (difference: string) => `${difference}: less`,
      noDifference: (difference: string) => `${difference}: no difference that can be told`,
      noUncertainty: (difference: string) =>
        `${difference}; without the meter’s accuracy in both records that is not judged`,
      notMeasured: 'one of the two was not measured',
      atLeast: 'a run that was not complete shows only the least that a pack gave: not compared',
      otherCurrent: 'the runs were at currents more than 10 % apart: not compared',
      otherCurrency: 'prices in different currencies: not compared',
      otherBasis: 'one rests on measured energy, the other on nominal voltage: not compared',
    },
  },

  claims: {
    subhead: 'On the nameplate and by the scale',
    pricePerPromisedKwh: 'Price per promised kWh',
  },
} as const;
