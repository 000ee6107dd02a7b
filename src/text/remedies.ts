import { formatTyped } from './format-number.ts';
import { formatValue } from './format-unit.ts';
import { listOf } from './sheet.ts';

/** What remedies take and come to: on their screen, on the sheet and on the owner's page. */
export const remedyWords = {
  title: 'Remedies',
  lead: 'What would put right what was found or is still open: first what an owner can do from outside, then workshop work; within each, what gains most comes first. Each gain is on top of those before it.',
  caution:
    'Work inside a pack belongs in a workshop equipped for it: cells stay live and cannot be switched off. Local codes and licensed practice come before anything said here.',
  parts: (parts: string) => `parts: ${parts}`,
  price: (price: string) => `cost: ${price}`,
  priceOn: (price: string, day: string) => `cost: ${price} on ${day}`,
  otherCurrency: 'in another currency than the nameplate’s: not counted',
  time: (time: string) => `work: ${time}`,
  note: 'The tester notes',
  ruledOut: 'does not count: no fuse of the advice fits',
  settles: (items: string) => `bears on: ${items}`,

  smallest: {
    title: 'The fewest that clear every high and serious risk',
    nothing: 'Nothing found stands above medium risk. No remedy is needed for that; those listed are still worth it.',
    set: (numbers: readonly string[], hazards: string) =>
      numbers.length === 1
        ? `Remedy ${numbers[0]} below clears every high and serious risk by itself: ${hazards}.`
        : `Remedies ${listOf([...numbers])} below together clear every high and serious risk: ${hazards}.`,
    atWorst: (rest: string) => `Open items at their worst: ${rest}`,
    atBest: (rest: string) => `At their best: ${rest}`,
    enough: (numbers: readonly string[]) =>
      numbers.length === 1 ? `remedy ${numbers[0]} is enough.` : `remedies ${listOf([...numbers])} are enough.`,
    none: 'nothing needs clearing.',
    uncleared: (hazards: string) => `No listed remedy clears: ${hazards}.`,
    rest: (numbers: readonly string[], hazards: string) =>
      numbers.length === 1
        ? `Remedy ${numbers[0]} below clears all other high and serious risks by itself: ${hazards}.`
        : `Remedies ${listOf([...numbers])} below together clear all other high and serious risks: ${hazards}.`,
    numbered: (number: string, text: string) => `${number}. ${text}`,
    inexact:
      'More than 20 remedies bear on it, so this set was put together one remedy at a time: a smaller one may do.',
  },

  steps: 'Step by step',
  asFound: 'As found',
  afterOutside: 'After all work from outside',
  afterAll: 'After all work',

  costs: {
    title: 'What it costs',
    asFound: 'As found',
    outside: 'After outside work',
    all: 'After all work',
    perKwh: (money: string) => `${money} per kWh`,
    price: (money: string) => `remedies: ${money}`,
    atLeast: (text: string) => `at least ${text}`,
    noEnergy: 'The cost per delivered kWh is not known: it takes a price on the nameplate and a complete run.',
    ifNeeded: 'if all of it is needed and can be done',
    noted: (notes: readonly string[]) => notes.join('; '),
    unpriced: (numbers: readonly string[]) =>
      numbers.length === 1
        ? `Remedy ${numbers[0]} has no price yet and is not counted.`
        : `Remedies ${listOf([...numbers])} have no price yet and are not counted.`,
    inOtherCurrency: (numbers: readonly string[]) =>
      numbers.length === 1
        ? `Remedy ${numbers[0]} is priced in another currency than the nameplate’s and is not counted.`
        : `Remedies ${listOf([...numbers])} are priced in another currency than the nameplate’s and are not counted.`,
    unsure: (numbers: readonly string[]) =>
      numbers.length === 1
        ? `Remedy ${numbers[0]} may turn out not to be needed, or not possible: what decides that is still open.`
        : `Remedies ${listOf([...numbers])} may turn out not to be needed, or not possible: what decides that is still open.`,
    nonePriced: 'No remedy has a price yet. Type what you know; the rest stays unknown, not zero.',
    matter: 'Cost after remedies',
  },

  none: 'No remedy in the checklist bears on what was found.',
  nothingToScore: 'No item of this checklist can apply to this pack, so there is nothing to remedy.',
  withheld: 'A stop sign was found. Nothing puts such a pack right: remedies, costs and scores are withheld.',

  change: 'Parts, cost, time',
  changeOf: (number: number) => `Remedy ${number}: parts, cost, time`,
  dialog: {
    title: (number: number) => `Remedy ${number}`,
    price: 'Cost',
    priceHint: 'Parts and, if it is paid for, work.',
    noCurrency: 'The nameplate has no currency: the figure stands without one.',
    pricedOn: 'Priced on',
    parts: 'Parts, if others than these',
    time: 'Working time',
    note: 'Note',
    save: 'Save',
    clear: 'Clear all',
    undoLabel: (number: number) => `Remedy ${number}: what it takes`,
    undoClear: (number: number) => `Remedy ${number}: cleared`,
  },
  toOwner: 'Before you use this pack',
  toSheet: 'To the sheet',
  toPack: 'To the pack',
};

const MIN_PER_H = 60;
/** Longer work is said in hours. Our choice: nobody plans 240 minutes. */
const HOURS_FROM_MIN = 120;

/** "20 to 45 min", "1.5 to 4 h", "15 min". */
export function workTime({ from, to }: { from: number; to: number }): string {
  const inHours = to >= HOURS_FROM_MIN && (from % 15 === 0 || from >= HOURS_FROM_MIN);
  const figure = (min: number) => (inHours ? Number((min / MIN_PER_H).toFixed(2)) : min);
  const end = formatValue(figure(to), inHours ? 'h' : 'min');
  return from === to ? end : `${formatTyped(figure(from))} to ${end}`;
}
