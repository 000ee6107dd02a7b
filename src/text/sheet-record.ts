import type { Afterwards } from '../schema/afterwards.ts';
import type { MakeSafe } from '../schema/make-safe.ts';
import type { Nameplate } from '../schema/nameplate.ts';
import type { LidOffState } from '../schema/pack-states.ts';

/** Words for what a record holds beside its answers: nameplate, make safe, states, afterwards. */
export const OBTAINED_WORDS: Readonly<Record<NonNullable<Nameplate['obtained']>, string>> = {
  bought: 'bought',
  lent: 'lent',
  supplied: 'supplied',
  found: 'found',
};

export const obtainedWords = {
  from: (how: string, whom: string) => `${how} from ${whom}`,
  commission: 'The tester’s links to the seller pay a commission.',
  noCommission: 'No link of the tester’s pays a commission.',
  unknown: 'How the sample was obtained is not stated.',
  sample: (how: string) => `Sample ${how}.`,
  invented: 'Invented demo: no such pack exists.',
};

/** Labels of the promised table, in its order. */
export const promisedLabels = {
  maker: 'Maker',
  model: 'Model',
  serial: 'Serial number',
  revision: 'Revision',
  madeOn: 'Made on',
  voltage: 'Nominal voltage',
  capacity: 'Capacity',
  energy: 'Energy',
  energyComputed: 'Wh not printed: Ah × V',
  cells: 'Cells',
  series: (cells: number) => `${cells} in series`,
  strings: (strings: number) => (strings === 1 ? 'one string' : `${strings} strings in parallel`),
  continuous: 'Continuous current',
  peak: 'Peak current',
  peakFor: (seconds: string) => `for ${seconds}`,
  chargeCurrent: 'Charge current',
  chargeVoltage: 'Charge voltage',
  cutOff: 'Cut-off voltage',
  chargeTemp: 'Charge temperature',
  dischargeTemp: 'Discharge temperature',
  massClaimed: 'Mass, claimed',
  massFound: 'Mass, found',
  sizeFound: 'Size, found',
  specificEnergy: 'Promised energy per mass',
  energyDensity: 'Promised energy per volume',
  ip: 'Enclosure code',
  cycles: 'Cycle life',
  warranty: 'Warranty',
  marks: 'Marks',
  price: 'Price',
  seller: 'Seller',
  received: 'Received',
  obtained: 'Sample',
  note: 'The tester notes',
  to: (low: string, high: string) => `${low} to ${high}`,
  from: (low: string) => `from ${low}`,
  upTo: (high: string) => `up to ${high}`,
  onDay: (day: string) => `on ${day}`,
} as const;

export const deliveredWords = {
  promised: 'Promised',
  delivered: 'Delivered',
  notTested: 'not tested',
  notTestedNote: 'Capacity and energy were not measured: what the pack delivers is not known from this sheet.',
  pricePerPromised: 'Per promised kWh',
  pricePerDelivered: 'Per delivered kWh',
  atLeastNote:
    'No run both began full and ended empty: the pack may hold more, and no cost per delivered kWh is given.',
  nothingPromised: 'not stated',
  checks: 'What the nameplate’s own figures say',
  promisedTable: 'On the nameplate and by the scale',
};

export const passedWords = {
  subhead: 'Make safe, passed before the lid came off',
  none: 'Make safe was not passed: the lid stayed on.',
  passed: (moment: string, voltage: string) => `${moment}: pack at ${voltage}`,
  chargeState: {
    low: 'at or under about 30 % charge',
    part: 'part charged',
    full: 'full',
    unknown: 'state of charge not known',
  } satisfies Record<MakeSafe['chargeState'], string>,
  company: {
    'second-person': 'a second person present',
    alone: 'alone',
  } satisfies Record<MakeSafe['company'], string>,
  cautions: (count: number) => `${count} cautions acknowledged`,
  sensorSubhead: 'Before the hot and cold sensor tests',
};

export const stateWords = {
  subhead: 'States of the pack',
  names: { untouched: 'Untouched', liveOpen: 'Live and open', apart: 'Apart' } satisfies Record<LidOffState, string>,
  entered: (name: string, moment: string) => `${name}: from ${moment}`,
  leftBehind: (items: string) => `left behind, no longer to be seen: ${items}`,
  nothingLeft: 'nothing was left behind',
  closed: 'The lid stayed on.',
};

export const methodWords = {
  tester: 'The tester’s method',
  clock: (offset: string) => `Times are local, ${offset}.`,
  checklist: 'Checklist',
  version: (title: string, id: string, version: string) => `${title} (${id} ${version})`,
  hash: 'SHA-256 of the checklist',
  route: 'Route',
  routeAsked: (route: string, asked: number, all: number) => `${route}, ${asked} of ${all} items`,
  app: 'Underlid',
  draft: 'a draft: it may still change',
  facts: 'Facts of this pack',
  factOpen: 'not settled',
};

export const afterwardsWords = {
  none: 'Not recorded.',
  labels: { fate: 'Sample', on: 'Since', cells: 'Cells', where: 'Where' },
  note: 'The tester notes',
  fate: {
    kept: 'kept',
    'closed-again': 'closed again',
    'in-parts': 'in parts',
    recycled: 'recycled',
    returned: 'returned',
    'damaged-set-apart': 'damaged, set apart',
    other: 'other',
  } satisfies Record<NonNullable<Afterwards['fate']>, string>,
  cells: {
    'with-pack': 'with the pack',
    reused: 'reused',
    stored: 'stored',
    recycled: 'recycled',
    unknown: 'not known',
  } satisfies Record<NonNullable<Afterwards['cells']>, string>,
};

/** Where a photo outside the zones was taken. */
export const PHOTO_PLACES: Readonly<Record<string, string>> = {
  arrival: 'Arrival',
  nameplate: 'Nameplate',
  'make-safe': 'Make safe',
  afterwards: 'Afterwards',
};
