import { words } from './words.ts';

/** What the marks of a take are called, on the screen and in the files. */
export const markWords = {
  take: (number: number) => `Take ${number}`,
  answer: (item: string, outcome: string) => `${item}: ${outcome}`,
  photo: (number: number) => `Photo ${number}`,
  own: (number: number) => `Mark ${number}`,
  test: (name: string, which: string) => `${name}: ${which}`,
  cell: (number: string) => `cell ${number}`,
  tests: {
    run: 'Capacity run',
    trip: 'Over-current trip',
    cutOff: 'Cut-off test',
    cellSet: 'Cell readings',
    resistance: 'DC resistance',
    lead: 'Lead measured',
    joint: 'Joint under load',
    drain: 'Standby drain',
    parallelRun: 'Run in parallel',
    readOut: 'BMS read-out',
    cellMark: 'Cell code',
    ruler: 'Distance on a photo',
  },
  cellStates: {
    rested: 'rested',
    nearFull: 'near full',
    justEmptied: 'just emptied',
    underLoad: 'under load',
  },
};

/** In the files that chapters are written to. */
export const chapterWords = {
  start: 'Start',
  nameless: 'Mark',
  joined: (first: string, second: string) => `${first} · ${second}`,
  head: (pack: string, take: string) => `${pack}, ${take}`,
  /** Of a file's name. */
  fileEnd: (take: number) => `take-${take}`,
};

/** The Shoot clock. */
export const shootClockWords = {
  title: 'Shoot clock',
  lead: 'A clock that runs beside your camera. While a take runs, each answer, photo and test is marked with its time, to become chapters of the video.',
  startNext: (number: number) => `Start take ${number}`,
  clap: (take: string) =>
    `Start the camera, then this clock, and say aloud: “${take}”. The moment you say it is 0:00 here.`,
  runsSince: (clock: string) => `Running since ${clock}`,
  time: 'Time in the take',
  label: 'What to mark (can stay empty)',
  markNow: 'Mark now',
  unnamed: 'this moment',
  end: 'End this take',
  lastMark: (time: string, title: string) => `Last mark ${time}: ${title}`,
  noMark: 'Nothing marked yet. Answers, photos and tests mark themselves.',

  running: (take: string) => `${take} is running`,
  forgotten: (take: string) => `${take}: when did it end?`,

  forgottenLead: (since: string) =>
    `It was started ${since} and never ended. Nothing is marked in it any more. When did it end?`,
  endedAtLastMark: (time: string) => `At its last mark, ${time}`,
  endedAfter: 'It ran for',
  endedAfterHint: 'mm:ss or h:mm:ss',
  endIt: 'End it there',
  beforeLastMark: (time: string) => `Its last mark is at ${time}: it ran at least that long.`,
  atMostDay: 'A take is a day long at most.',

  takes: 'Takes',
  runs: 'running',
  startOfTake: 'Start, said aloud',
  noMarks: 'No mark in this take.',
  about: (length: string, marks: number) => `${length} · ${marks === 1 ? '1 mark' : `${marks} marks`}`,
  shift: (shift: string) => `The film is ${shift} from the clock.`,
  noShift: 'Times are as on the clock.',
  rename: 'Rename',
  renameTitle: (take: string) => `Rename ${take.charAt(0).toLowerCase()}${take.slice(1)}`,
  name: 'Name of this take',
  nameHint: 'Left empty it is called by its number.',
  keep: 'Keep it',
  remove: 'Remove',
  gone: 'No longer in the record',
  markAt: (title: string, time: string) => `${title}, at ${time}`,
  inFilm: 'In the recording this mark is at',
  inFilmHint: 'mm:ss or h:mm:ss, tenths after a point',
  inFilmShort: (time: string) => `film ${time}`,
  setByMark: 'Set the times by it',
  setByMarkLead: 'Look the moment up in the recording. All times of this take follow.',
  takeOut: 'Take this mark out',
  notATime: (typed: string) => `“${typed}” is no time. Type minutes and seconds with a colon, such as 12:05.`,
  tooFar: 'That is more than a day from the clock. Look it up again.',

  offset: 'Film and clock',
  offsetLead: 'Camera started first: add seconds. Clock started first: take some off.',

  files: 'Chapters',
  vtt: 'Chapters as WebVTT',
  plain: 'Chapters as text lines',
  beforeStart: (count: number) =>
    `${count === 1 ? '1 mark lies' : `${count} marks lie`} before the recording begins; put at 0:00.`,
  short: (count: number) =>
    `${count === 1 ? '1 chapter is' : `${count} chapters are`} shorter than 10 s. Some video sites then show none of a text list.`,
  goneLeftOut: (count: number) =>
    `${count === 1 ? '1 mark' : `${count} marks`} of what is no longer in the record: left out.`,

  undo: {
    started: (take: string) => `${take}: started`,
    ended: (take: string) => `${take}: ended`,
    removed: (take: string) => `${take}: removed`,
    renamed: (take: string) => `${take}: name`,
    shifted: (take: string) => `${take}: times`,
    marked: (title: string) => `Marked: ${title}`,
    takenOut: (title: string) => `Taken out: ${title}`,
  },
  cancel: words.cancel,
};
