/** Items, facts, zones and the states of Lid off. */
export const stateWords = {
  arrival: 'Arrival',
  loaded: 'while running it closed',
  untouched: 'untouched',
  liveOpen: 'live and open',
  apart: 'apart',
};

export const itemWords = {
  position: (index: number, count: number) => `${index} of ${count}`,
  worstCounts: 'The worst sentence that is true counts.',
  notSeen: 'Not seen',
  doesNotApply: 'Does not apply',
  whyItMatters: 'Why it matters',
  photo: 'Photo',
  note: 'Note',
  noteFull: 'Note ✓',
  next: 'Next ›',
  lastOne: 'Done ›',
  how: 'How do you know?',
  evidence: {
    seen: 'seen',
    measured: 'measured',
    told: 'told',
  },
  toldSafety: 'Told, not looked at: a claim alone counts as passable at best on a safety item.',
  notSeenTitle: 'Not seen: why?',
  notSeenReasons: [
    'Cannot be reached without damage',
    'Covered by something that must stay',
    'No tool for it here',
    'Would not be safe now',
    'No time left',
  ],
  ownReason: 'Another reason',
  keepReason: 'Keep this reason',
  doesNotApplyTitle: 'Does not apply: why?',
  clear: 'Take the answer back',
  noteTitle: 'Note',
  noteHint: 'In your own words; it is printed beside the finding as yours.',
  keepNote: 'Keep note',
  photosHere: 'Photos of this',
  photoWanted: 'A photo is wanted here.',
  basis: 'Basis',
  basisWords: {
    commonPractice: 'common practice, no source',
    ourChoice: (because: string) => `our choice: ${because}`,
    secondary: (source: string) => `${source} (as quoted elsewhere)`,
    memory: (source: string) => `${source} (from memory, not checked)`,
    bears: (source: string, bears: string) => `${source} (${bears})`,
  },
  excluded: 'This pack does not have it, by what you answered earlier. It is not asked.',
  openFact: (ask: string) => `It is asked only for some packs. First: “${ask}”`,
  lostIfLeft: (lost: string) => `Last chance: ${lost}`,
  unlooked: 'Answered together with the rest of the zone, not looked at singly.',
  unknown: 'This checklist has no such item.',
};

export const factWords = {
  about: 'About this pack',
  clear: 'Take the answer back',
  /** Short first: the line it stands in is cut off at its end. */
  answered: (ask: string, answer: string) => `${answer}: ${ask}`,
};

export const zoneWords = {
  items: 'Items',
  leftOpen: 'Left open earlier',
  leftOpenHint: 'What can still be told is worth answering; what cannot is “Not seen”.',
  nothingNow: (state: string) => `Nothing of this zone is asked while the pack is ${state}.`,
  inState: (state: string, open: number, count: number) =>
    open === 0 ? `When ${state}: ${count}, all answered` : `When ${state}: ${open} of ${count} open`,
  restIsSound: (count: number) => `The rest of this zone is sound (${count})`,
  restIsSoundAsk: (count: number) =>
    `Answer ${count} ${count === 1 ? 'item' : 'items'} as sound? Safety, stop and other grave items are left for you to look at. The sheet says they were not looked at singly.`,
  restIsSoundNow: 'Yes, the rest is sound',
  photos: 'Photos of this zone',
  open: 'open',
  notSeen: 'not seen',
  doesNotApply: 'does not apply',
  notAsked: 'not asked',
};

export const lidOffWords = {
  title: 'Lid off',
  lookHereNext: 'Look here next',
  /** A zone's name on the drawing: small letters, but for an abbreviation such as BMS. */
  zoneOnMap: (title: string) => title.replace(/\S+/g, (word) => (/\p{Lu}{2}/u.test(word) ? word : word.toLowerCase())),
  settlesUpTo: (points: string) => `narrows the range by about ${points} points`,
  goOn: 'Go on',
  photoFirst: 'Photo first',
  nothingOpen: 'Everything asked in this state is answered.',
  nextState: { untouched: 'Go on: live and open', liveOpen: 'Go on: take it apart', apart: 'To the sheet' },
  cantBeHadLater: (items: number, photos: number) =>
    [
      items > 0 ? `${items} ${items === 1 ? 'item' : 'items'}` : '',
      photos > 0 ? `${photos} ${photos === 1 ? 'photo' : 'photos'}` : '',
    ]
      .filter(Boolean)
      .join(' and '),
  beforeFurther: (what: string) => `Before you go further: ${what} can’t be had later`,
  openSafety: (count: number) => (count === 1 ? '1 safety item is still open' : `${count} safety items are still open`),
  safetyTitle: 'Safety items still open',
  makeSafeAgain: 'Make safe was passed more than four hours ago or on another day. Pass it again before you go on.',
  makeSafeFirst: 'The lid comes off only after Make safe: voltage, covered terminals, cautions.',
  toMakeSafe: 'To Make safe',
};

export const beforeWords = {
  title: 'Before you disturb it',
  lead: {
    untouched: 'Once wires, covers or tapes are moved, these can’t be seen as they were:',
    liveOpen: 'Once the pack is taken apart, these can’t be had again:',
  },
  open: 'open',
  photoMissing: 'no photo yet',
  nothing: 'Nothing is lost by going on: every item that can’t be had later is answered and has its photo.',
  goLive: 'Go on to live and open',
  goApart: 'Go on to apart',
  goAnyway: (count: number) => `Leave ${count}, go on`,
  stayHere: 'Stay and look',
  liveNote: 'The cells stay live: short circuits stay possible until the very end. Never heat a cell.',
  stateMark: (state: string) => `Now: ${state}`,
};
