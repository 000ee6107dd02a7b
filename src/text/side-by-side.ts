import { listOf } from './sheet.ts';

/** Packs in columns, on screen and paper. */
export const gridWords = {
  more: (columns: number) => `${columns} packs: scroll sideways for more`,
  scroller: (columns: number) => `${columns} packs side by side; scroll sideways for more`,
  band: (from: number, to: number, all: number) =>
    from === to ? `Pack ${from} of ${all}` : `Packs ${from} to ${to} of ${all}`,
};

const items = (count: number) => (count === 1 ? 'one item' : `${count} items`);

/** What the comparison of packs says. */
export const sideBySideWords = {
  overline: (day: string | null) => (day === null ? 'Side by side' : `Side by side · ${day}`),
  /** More than three names would fill the head. */
  name: (names: readonly string[]) =>
    listOf(names.length <= 3 ? names : [...names.slice(0, 2), `${names.length - 2} more`]),
  /** Stands at the head of every page: names that would fill it are left to the first one. */
  runningTitle: (name: string) => (name.length <= 48 ? `Side by side: ${name}` : 'Side by side'),
  count: (count: number) => (count === 1 ? 'One pack' : `${count} packs`),
  /** In the head of a paper of which lines are left out, and at the head of its every page. */
  countHidden: (count: string, hidden: number) =>
    `${count}. Only what differs, and all protections: ${hidden === 1 ? 'one line, alike in all packs, is' : `${hidden} lines, alike in all packs, are`} left out.`,
  standingHidden: (count: string) => `${count}, only what differs`,
  demo: (invented: number, all: number) => (invented === all ? 'invented demo' : 'partly invented demo'),
  caution: (count: number) =>
    count === 1
      ? 'One sample, as found. No certification.'
      : 'Each pack as found on its own sheet, one sample each unless said. No certification.',
  madeBy: (appVersion: string) => `Underlid ${appVersion}`,
  twin: (name: string, mark: string) => `${name}, ${mark}`,
  numbered: (name: string, number: number) => `${name} (${number})`,

  sections: {
    result: 'Result',
    firmness: 'How firm the order is',
    basis: 'What the comparison rests on',
    plots: 'In pictures',
    disclosure: 'How each sample was obtained',
    cautions: 'Cautions',
  },

  groups: {
    zones: 'Zones, of 100',
    findings: 'Findings by severity',
    tests: 'Live tests',
    cost: 'Price and cost',
    protections: 'Protections, as tried',
    how: 'How it was done',
  },

  labels: {
    rank: 'Rank',
    verdict: 'Verdict',
    score: 'Score, of 100',
    build: 'Build, of 100',
    factor: 'Factor',
    noHazard: 'No hazard',
    charge: 'Capacity delivered',
    energy: 'Energy delivered',
    retention: 'Left at the hardest rate',
    mass: 'Mass',
    specificEnergy: 'Delivered per mass',
    price: 'Price',
    cost: 'Per delivered kWh, as found',
    afterOutside: 'Per delivered kWh, after outside work',
    afterAll: 'Per delivered kWh, after all work',
    route: 'Route',
    checklist: 'Checklist',
    settled: 'Settled',
    sheet: 'Sheet',
    obtained: 'Sample',
  },
  severity: (roman: string, name: string) => `${roman} ${name}`,

  none: '\u2013',
  rank: (rank: number, of: number) => `${rank} of ${of}`,
  rankGroup: (route: string) => `among those on the ${route}`,
  /** More than two names would hide the rank; the basis says them all. */
  tiedWith: (names: readonly string[]) =>
    names.length <= 2 ? `tie with ${listOf(names)}` : `tie with ${names.length} others`,
  notRanked: { stop: 'not ranked: a stop sign was found', nothingToScore: 'not ranked: nothing to score' },
  alone: 'nothing to rank against',
  withheld: 'withheld',
  nothingToScore: 'nothing to score',
  atWorst: (low: string, high: string) => `${low} at worst, ${high} at best`,
  onItsOwn: (verdict: string) => `by all it was asked: ${verdict}`,
  notApplying: 'does not apply',
  worst: (grade: string) => `worst: ${grade}`,
  nothingGraded: 'nothing graded',
  notTested: 'not tested',
  notMeasured: 'not measured',
  atLeast: (figure: string) => `at least ${figure}`,
  ofPromised: (share: string, promised: string) => `${share} of ${promised} promised`,
  computed: 'promise from Ah × V',
  rates: (hard: string, gentle: string) => `${hard} against ${gentle}`,
  outOfReach: 'could not be worked out',
  notStated: 'not stated',
  massClaimed: 'claimed',
  massWeighed: 'weighed',
  onClaimedMass: 'on the claimed mass',
  noPrice: 'no price',
  onDay: (day: string) => `on ${day}`,
  noDay: 'day not noted',
  with: (options: readonly string[]) => `with ${listOf(options)}, not tested`,
  leftOut: (options: readonly string[]) => `without ${listOf(options)}: in another currency`,
  nominal: 'on charge × nominal voltage',
  noRun: 'no complete run',
  noMass: 'mass not known',
  noRemedy: 'no remedy listed',
  noOutside: 'no outside remedy listed',
  unpriced: (count: number) => (count === 1 ? 'one remedy has no price' : `${count} remedies have no price`),
  inOtherCurrency: (count: number) =>
    count === 1 ? 'one remedy is in another currency' : `${count} remedies are in another currency`,
  ifNeeded: 'if all of it is needed and can be done',
  noRemedyPrice: 'remedies not priced',
  otherCurrency: 'price and remedies in different currencies',
  routeAsked: (asked: number, all: number) => `${asked} of ${all} asked`,
  checklist: (id: string, version: string) => `${id} ${version}`,
  settled: (settled: number, asked: number) => `${settled} of ${asked}`,
  notAsSealed: 'as it stands now, not as sealed',
  stillOpen: (count: number) => `${items(count)} still open`,

  protections: {
    overCurrent: 'Over-current',
    short: 'Short circuit',
    lowTemperature: 'Charging in the cold',
    highTemperature: 'Heat',
    lowVoltage: 'Low voltage',
    highVoltage: 'High voltage',
  },
  protectionStates: { acts: 'acts', actsLate: 'acts late', doesNot: 'does not act', notTested: 'not tested' },
  trials: (count: number) => (count === 1 ? 'one trial' : `${count} trials`),
  heatOnly: (count: number, trials: number) =>
    count === trials
      ? `only heat ended ${count === 1 ? 'it' : 'them'}`
      : `only heat ended ${count === 1 ? 'one' : count} of them`,
  sides: { charge: 'charging only', load: 'load only', both: 'charging and load' },

  firmness: {
    none: 'Fewer than two packs can be ranked against one another: there is no order to weigh.',
    notDrawn: 'How firm the order is was not worked out.',
    intro: (draws: string, seed: number) =>
      `How much a zone and a hazard should weigh is a choice. ${draws} other choices near the checklist’s own were drawn (seed ${seed}), each the same for all packs.`,
    among: (names: readonly string[]) => `Among ${listOf(names)}:`,
    leads: (name: string, times: string) => `${name} leads ${times}`,
    lead: (names: string, count: number, times: string) => `${names} ${count === 1 ? 'leads' : 'lead'} ${times}`,
    noneLeads: (times: string) => `None leads ${times}`,
    noneEver: 'None leads in any weighting.',
    holds: (times: string) => `The whole order stands as it does here ${times}`,
    above: (upper: string, lower: string, times: string) => `${upper} stands above ${lower} ${times}`,
    all: 'in every weighting.',
    never: 'in no weighting.',
    without: (rows: readonly string[]) => `Not part of this order: ${rows.join('; ')}.`,
    withoutRow: (name: string, because: string) => `${name} (${because})`,
    elsewhere: (among: string) => `on the ${among}, never ranked with these`,
    otherChecklist: 'by another checklist, never ranked with these',
    of100: (count: number) => `in ${count} of 100 weightings.`,
    verdicts: 'Verdicts do not depend on these weights: a pack with the better verdict stands above whatever they are.',
  },

  basis: {
    common: (names: readonly string[], given: { checklist: string; route: string; count: number }) =>
      `${listOf(names)}: ${given.checklist}, ${given.route}, ${items(given.count)} that ${names.length === 1 ? 'it was' : names.length === 2 ? 'both were' : 'all were'} asked.`,
    weighed: (version: string) =>
      `Their checklists differ: rank, verdict, score, Build, factor and zones rest on the common items alone, weighed as version ${version} does.`,
    leftOut: 'Left out, because not all were asked',
    askedOf: (names: readonly string[]) => `asked of ${listOf(names)} only`,
    apart:
      'Packs asked on different routes, or by checklists that are not versions of one another, are never ranked together. Their figures stand side by side; their order says nothing.',
    tie: (name: string, others: string) => `${name} is in a tie with ${others}.`,
    ties: 'A tie: neither stands above the other, because their ranges overlap or what is open leaves their verdicts undecided.',
    worse: (name: string, own: string) =>
      `${name} fares worse by all that it was asked than by the common items: ${own}.`,
    samplesOf: (count: number, name: string, unscored: number) =>
      `${count} samples of ${name}${unscored === 0 ? '' : `, ${unscored === count ? 'all' : unscored} of them without a score`}`,
    samples: (samples: string, spread: string) =>
      `${samples}: scores of ${spread}. What lies between is what samples differ by, and what is still open.`,
    samplesUnscored: (samples: string) => `${samples}: there are no two scores to set against one another.`,
    samplesApart: (samples: string) =>
      `${samples}: they were asked differently, so their scores are not set against one another.`,
    oneSample: (names: readonly string[]) =>
      `One sample of ${listOf(names)}: how far further samples differ is not known.`,
    own: 'Findings are counted among the common items. Live tests, prices and protections are each pack’s own.',
    voltages: (rows: readonly string[]) =>
      `Nominal voltages differ: ${rows.join('; ')}. An ampere-hour or an ampere then stands for different energy and power: Wh compare, Ah and A do not.`,
    voltagesUnknown: (names: readonly string[]) =>
      `Nominal voltage not stated: ${listOf(names)}. Whether Ah and A compare with the others’ is not known.`,
    cutOffs: (rows: readonly string[], perCell: boolean) =>
      `Capacity runs ended at different voltages${perCell ? ' of a cell' : ''}: ${rows.join('; ')}. One that is run lower delivers more.`,
    cutOffsUnknown: (names: readonly string[]) =>
      `Where the capacity runs ended is not known: ${listOf(names)}. One that is run lower delivers more.`,
    ofPack: (name: string, figure: string) => `${name} ${figure}`,
    currencies: (currencies: readonly string[]) =>
      `Prices stand in ${listOf(currencies)}: amounts in different currencies are not compared.`,
    options: 'An option was not part of the tested sample: its price is counted, what it changes is not known.',
  },

  plots: {
    scoreCost: {
      alt: (rows: readonly string[]) => `Score against cost per delivered kWh. ${rows.join('; ')}.`,
      altRow: (name: string, score: string, cost: string) => `${name}: score ${score}, ${cost} per kWh`,
      nothing: 'No pack has both a score and a cost per delivered kWh.',
      score: 'Score',
      cost: (currency: string | null) =>
        currency === null ? 'Cost per delivered kWh' : `Cost per delivered kWh, ${currency}`,
      without: (names: readonly string[]) => `Not drawn, for want of a score or a cost: ${names.join(', ')}.`,
      caption: 'Higher is better built, further left is cheaper. Upright bars span what is still open.',
    },
    zones: {
      alt: (rows: readonly string[]) => `Zones of each pack, 0 to 100. ${rows.join('; ')}.`,
      altRow: (name: string, zones: readonly string[]) => `${name}: ${zones.join(', ')}`,
      altZone: (zone: string, shown: string) => `${zone} ${shown}`,
      nothing: 'No zone has anything that was graded.',
      axis: 'Zone, of 100',
      open: 'open',
      without: (rows: readonly string[]) => `Open, so not drawn: ${rows.join('; ')}.`,
      withoutRow: (name: string, zones: readonly string[] | 'all') =>
        zones === 'all' ? `${name} in every zone` : `${name} in ${listOf(zones)}`,
      caption: 'One sign and dash a pack; level bars span what is still open.',
    },
  },

  cautions: {
    score:
      'A score says how a sample is built, not what it delivers. Capacity, cost and protections stand beside it, not in it.',
    cost: 'Cost per delivered kWh is price over the energy of one run-down. It says nothing of how many run-downs a pack will live.',
    remedies:
      'Remedy prices are as the tester typed them. One without a price is not counted; one for what is still open may turn out not to be needed.',
  },

  csv: {
    group: 'Group',
    line: 'Line',
    marks: 'Marks',
    disclosure: 'Disclosure',
    caution: 'Caution',
    withNote: (text: string, note: string) => `${text} (${note})`,
  },
};
