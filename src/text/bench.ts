/** Bench, and the pack's own screen with its stations. */
export const benchWords = {
  title: 'Bench',
  empty: 'No pack on the bench yet.',
  emptyHint:
    'Take one drop-in LFP pack from the unopened box to a scored sheet. Everything stays on this phone and works without a signal.',
  newPack: 'New pack',
  notBegun: 'The pack could not be begun: this phone did not save it. Free some space, or load the page again.',
  keep: 'Keep',
  search: 'Find a pack',
  noMatch: (text: string) => `No pack matches “${text}”.`,
  demo: 'Demo bench',
  demoHint: 'Two invented packs, ready to look at',
  demoIn: 'Lay out the demo bench',
  demoOut: 'Put the demo bench away',
  demoIsIn: 'The demo bench is out: Wren 24 and Dipper 24 are invented, and so is everything found in them.',
  demoFailed: 'The demo bench could not be laid out. Load the page again once with a signal, then try again.',
  demoBusy: 'Laying out the demo bench …',
  settled: (settled: number, asked: number) => `${settled} of ${asked} settled`,
  wholeSettled: 'whole route settled',
  shortSettled: 'short route settled',
  install:
    'Put Underlid on this phone before the first pack: it then opens without a signal and the phone is less likely to clear its records.',
  installNow: 'Install on this phone',
  persistNow: 'Ask the phone to keep the records',
  persistRefused:
    'The phone may clear these records when it runs short of space. Save a bundle in Keep after each pack.',
  newerVersion: 'A newer Underlid is ready.',
  loadNewer: 'Use it now',
  later: 'Later',
  readyOffline: 'Ready to work without a signal.',
  vanished: (packCount: number, since: string) =>
    `The records of ${packCount} ${packCount === 1 ? 'pack' : 'packs'} that were on this phone on ${since} are gone: the browser or someone cleared them. Restore your last bundle in Keep.`,
};

export const stageWords = {
  nameplate: 'Nameplate',
  arrival: 'Arrival',
  makeSafe: 'Make safe',
  untouched: 'Lid off, untouched',
  liveOpen: 'Lid off, live and open',
  apart: 'Lid off, apart',
  sheet: 'Sheet',
  afterwards: 'Afterwards',
};

export const packWords = {
  stations: 'Stations of this pack',
  nameplate: 'Nameplate',
  arrival: 'Arrival',
  makeSafe: 'Make safe',
  lidOff: 'Lid off',
  photos: 'Photos',
  sheet: 'Sheet',
  afterwards: 'Afterwards',
  filled: (count: number) => (count === 0 ? 'empty' : `${count} filled in`),
  photoCount: (count: number) => (count === 0 ? 'none' : `${count}`),
  notYet: 'not yet',
  closedByStop: 'closed: a stop finding stands',
  needsMakeSafe: 'after Make safe',
  passedUntil: (time: string) => `passed, good until ${time}`,
  passedOn: (day: string) => `passed on ${day}`,
  askAgain: 'to be passed again',
  goOn: (station: string) => `Go on: ${station}`,
  route: 'How much is asked',
  shortRoute: (count: number) => `Short route, ${count} items`,
  wholeRoute: (count: number) => `Whole route, ${count} items`,
  between: (low: string, high: string, settled: number, asked: number) =>
    `Between ${low} and ${high} as far as it is known: ${settled} of ${asked} settled.`,
  nothingToScore: 'Nothing to score yet.',
  putAway: 'Put this pack away',
  putAwayAsk: 'Put this pack away? It leaves the bench; Keep can bring it back with everything in it.',
  putAwayNow: 'Put it away',
  lost: 'There is no such pack on this phone.',
  lostHint: 'It may be on another phone, or the address was cut off. A bundle restored in Keep brings packs back.',
  toBench: 'To the bench',
  noDefinition:
    'The checklist this pack was begun with is not on this phone, so it cannot be graded. Nothing was changed. Restore the bundle it came from in Keep.',
};
