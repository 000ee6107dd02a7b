/**
 * Make safe: the gate before the lid comes off. Cautions in our own words after HSE INDG139, OSHA 29 CFR 1926.441 and
 * 1910.303(g)(2), DOE-HDBK-1092-98 §7.4.5, NFPA 70E-2021 Annex F, ERG 2024 Guide 147 and Larsson et al. (2017).
 */
export const makeSafeWords = {
  title: 'Make safe',
  lead: 'Local codes and a licensed practitioner come first. If either says no, stop here. Nothing in Underlid overrides them.',
  voltage: 'Pack voltage at the posts, measured now',
  voltageWrong: 'Measure at the posts and type volts, from 0 to 2000. It is not saved yet.',
  notAsPromised: (promised: string) => `The nameplate says ${promised}. Measure again, or look at the nameplate again.`,
  chargeState: 'Charge state, as far as you can tell',
  chargeStateIs: (state: string) => `charge: ${state.toLowerCase()}`,
  chargeStates: { low: 'Low, about 30 % or less', part: 'Part', full: 'Full', unknown: 'Cannot tell' },
  chargeAdvice:
    'A nearly empty pack holds less to let go. About 30 % is the limit for air cargo and a good target here; rest voltage alone cannot tell it on the plateau.',
  company: 'Who is with you',
  companies: { 'second-person': 'A second person', alone: 'Alone' },
  aloneAdvice: 'Working alone: have somebody who knows where you are and calls at a set time.',
  photo: 'Photo of the covered terminals',
  photoTake: 'Photograph the covered terminals',
  photoHave: 'The photo is here.',
  photoAgain: 'Take it again',
  cautions: 'Each of these, before you tick it',
  pass: 'Made safe: open Lid off',
  missing: (what: string) => `Still missing: ${what}.`,
  missingParts: {
    voltage: 'pack voltage',
    chargeState: 'charge state',
    company: 'who is with you',
    secondPerson: 'a second person (above 50 V nobody works alone)',
    photo: 'the photo',
    cautions: (count: number) => (count === 1 ? '1 caution' : `${count} cautions`),
  },
  passed: (moment: string) => `Passed ${moment}.`,
  goodUntil: (time: string) => `Good until ${time} today. Asked again after four hours or on a new day.`,
  again: 'Pass it again',
  toLidOff: 'Go on: Lid off',
  earlier: 'Passed earlier',
};

/** Ids are stored with the record: never reuse one with another meaning. */
export const CAUTIONS: readonly { id: string; text: string; above50V?: true }[] = [
  {
    id: 'disconnected',
    text: 'Charger, load and data cables are off. Nothing else is connected to the pack.',
  },
  { id: 'no-metal-worn', text: 'Ring, watch, chain and bracelet are off; pockets are empty of metal.' },
  { id: 'eyes-and-hands', text: 'Eye protection is on, and gloves that suit the voltage and the sharp edges.' },
  { id: 'insulated-tools', text: 'Tools are insulated, one at a time on the bench, none resting on the pack.' },
  { id: 'terminals-covered', text: 'Both posts are covered with something that insulates and stays on.' },
  {
    id: 'place',
    text: 'The place is dry, aired and cannot burn; no flame or spark near; a way out is free behind you.',
  },
  {
    id: 'fire-plan',
    text: 'I know what to do on smoke: leave, close the door, call the fire service. I will not fight it.',
  },
  {
    id: 'cells-stay-live',
    text: 'The cells stay live when the lid is off: no cut, screw or swarf may bridge two of them.',
  },
  { id: 'never-heat-a-cell', text: 'I will never heat, pierce, crush or bend a cell.' },
  {
    id: 'above-50-guarded',
    above50V: true,
    text: 'Above 50 V this pack can kill: live parts are guarded, and only someone qualified for it works on them.',
  },
  {
    id: 'above-50-second',
    above50V: true,
    text: 'A second person stands by who can switch off, call for help and give first aid for electric shock.',
  },
];

/** Shown above 50 V. One rule draws its line there, another at 100 V; both are named. */
export const ABOVE_50_V =
  'This is above 50 V. OSHA 29 CFR 1910.303(g)(2) asks for live parts to be guarded from 50 V; NFPA 70E draws its line for batteries at 100 V DC. A 16-cell pack reaches 58.4 V, between the two. Your local code decides.';
