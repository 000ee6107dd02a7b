/** "3 photos"; nothing where there is none. */
function counted(count: number, what: string): string {
  if (count === 0) return '';
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}

/** "3 photos and 1 log", leaving out what there is none of. */
function listed(parts: readonly string[]): string {
  const some = parts.filter((part) => part !== '');
  return [some.slice(0, -1).join(', '), ...some.slice(-1)].filter((part) => part !== '').join(' and ');
}

/** What of a pack is named in its entries and whose bytes are not here. */
export type MissingCounts = Record<'photos' | 'logs' | 'sheets' | 'voices', number>;

/** Keep: space, backup, restore, how the phone shows things. */
export const keepWords = {
  title: 'Keep',
  look: 'Look and hand',
  lookHint: 'Dark or light, left or right thumb, units, paper.',
  theme: 'Theme',
  themes: { bench: 'Bench, dark', paper: 'Paper, light' },
  hand: 'Thumb',
  hands: { right: 'Right hand', left: 'Left hand' },
  units: 'Units shown',
  unitChoices: { metric: 'kg, mm, °C', imperial: 'lb, in, °F' },
  paper: 'Paper of the PDF',
  papers: { a4: 'A4', letter: 'Letter' },
  space: 'Space',
  used: (used: string, free: string) => `${used} used of about ${free} this phone allows.`,
  usedUnknown: 'This browser does not say how much space is used.',
  nearlyFull: 'Nearly full. Save a bundle, then remove packs for good that you no longer need here.',
  persisted: 'The phone has promised to keep the records.',
  notPersisted: 'The phone has not promised to keep the records: it may clear them when space runs short.',
  ask: 'Ask it to keep them',
  refused: 'It did not promise. Installing Underlid on the home screen often helps; a bundle always does.',
  backup: 'Save everything',
  backupLead:
    'All packs with photos, notes and callouts as one bundle, or several parts when it is large. Keep it on another device.',
  noBackup: ({ photos, logs, voices }: Record<'photos' | 'logs' | 'voices', number>) =>
    `${listed([counted(photos, 'photo'), counted(logs, 'log'), counted(voices, 'voice note')])} ${
      photos + logs + voices === 1 ? 'is' : 'are'
    } in no backup yet.`,
  allBackedUp: 'Every photo, log and voice note is in a backup.',
  lastBackup: (fileName: string, moment: string) => `Last backup: ${fileName}, ${moment}`,
  nothingToSave: 'No pack of your own to save yet. Demo packs are left out.',
  save: 'Save everything as a bundle',
  saving: (percent: string) => `Gathering: ${percent} …`,
  stop: 'Stop',
  stopped: 'Stopped. Nothing was saved; the records are as they were.',
  stoppedPart: 'Stopped. That part was not saved; nothing of it is left behind.',
  planned: (parts: number, size: string) =>
    parts === 1 ? `One bundle, about ${size}.` : `${parts} parts, about ${size} in all. Each can be restored alone.`,
  partState: (part: number, size: string, saved: boolean) => `Part ${part}: about ${size}${saved ? ', saved' : ''}`,
  making: (part: number, parts: number, percent: string) =>
    parts === 1 ? `Making the bundle: ${percent} …` : `Making part ${part} of ${parts}: ${percent} …`,
  writing: (fileName: string, percent: string) => `Writing ${fileName}: ${percent} …`,
  partReady: (part: number, parts: number, size: string) =>
    parts === 1
      ? `The bundle is ready, ${size}.`
      : `Part ${part} of ${parts} is ready, ${size}. Save it before the next.`,
  savePart: (fileName: string) => `Save ${fileName}`,
  nextPart: 'Saved, go on to the next part',
  savedNotNoted:
    'Saved. This phone could not note it, so it still counts these photos as being in no backup. Free some space.',
  savedAll: 'Saved. Copy it to another device: a backup on the same phone is lost with it.',
  leftOut: (count: number) =>
    `${count} ${count === 1 ? 'thing' : 'things'} cannot go in because the bytes are missing or damaged on this phone:`,
  backupFailed: 'The bundle could not be made. The records are as they were. Free some space and try again.',
  partNotSaved:
    'That part could not be written, and nothing of it is left behind. Free some space, or choose another place, then save it again.',
  restore: 'Restore',
  restoreLead: 'Choose one bundle, or all its parts. Everything in it is checked before anything is written.',
  choose: 'Choose bundles to restore',
  checking: (name: string) => `Checking ${name} …`,
  checkingShare: (name: string, percent: string) => `Checking ${name}: ${percent} …`,
  takingIn: (name: string, percent: string) => `Taking in ${name}: ${percent} …`,
  stoppedChecking: 'Stopped. Nothing on this phone was changed.',
  refusedFile: (name: string, reason: string) => `${name}: ${reason}`,
  restored: (name: string) => `${name} is restored.`,
  packAdded: (label: string) => `${label}: added`,
  packMerged: (label: string, written: number, newer: number) =>
    `${label}: ${written} ${written === 1 ? 'entry' : 'entries'} taken in` +
    (newer > 0 ? `, ${newer} newer here and kept` : ''),
  packNewerHere: (label: string, newer: number) => `${label}: nothing taken in, ${newer} newer here and kept`,
  packSame: (label: string) => `${label}: nothing in it that is not here already`,
  packMissing: (label: string, { photos, logs, sheets, voices }: MissingCounts) =>
    `${label}: ${listed([
      counted(photos, 'photo'),
      counted(logs, 'log'),
      counted(sheets, 'closed sheet'),
      counted(voices, 'voice note'),
    ])} ${photos + logs + sheets + voices === 1 ? 'is' : 'are'} not in these files; restore the other parts too`,
  skipped: (count: number) =>
    `${count} ${count === 1 ? 'file' : 'files'} in it that this Underlid has no use for ${count === 1 ? 'was' : 'were'} passed over.`,
  ahead: (name: string, day: string) =>
    `${name} is dated ${day}, more than a year ahead of this phone’s clock. Check the date of both phones: of two changes, the one dated later counts.`,
  cleaned: (count: number) =>
    `Hidden characters were taken out of ${count} ${count === 1 ? 'text' : 'texts'}; everything else in ${
      count === 1 ? 'it' : 'them'
    } is as it was:`,
  cleanedLine: (name: string, place: string, characters: string) =>
    place === '' ? `${name}: ${characters}` : `${name}, ${place}: ${characters}`,
  deletedHere: (count: number) =>
    count === 1
      ? 'One thing in it was deleted here after this backup was made. It stays deleted unless you bring it back:'
      : `${count} things in it were deleted here after this backup was made. They stay deleted unless you bring them back:`,
  bringBack: 'Bring back what was deleted',
  broughtBack: (count: number) => `${count} ${count === 1 ? 'entry is' : 'entries are'} back.`,
  moreOfThem: (count: number) => `and ${count} more`,
  stoppedAt: (label: string, reason: string) => `Stopped at ${label}: ${reason}`,
  stoppedByHand: 'as you asked. What was taken in before stays; this pack and what comes after are as they were.',
  fileChanged: 'the file is not any more what was checked. Choose it again.',
  away: 'Packs put away',
  awayLead: 'Off the bench, with everything still in them.',
  isBack: (label: string) => `${label} is back on the bench.`,
  isRemoved: (label: string) => `${label} is removed from this phone.`,
  bringPackBack: 'Bring back',
  removeForGood: 'Remove for good',
  removeAsk: (label: string) =>
    `Remove ${label} with all its photos from this phone? This cannot be undone here. Only a bundle brings it back.`,
  about: 'Underlid',
  aboutHint: 'Its version, and what it is not.',
  version: (version: string) => `Version ${version}`,
  notCertified:
    'Underlid helps to look, note and reckon. It certifies nothing, and it replaces neither local codes nor a licensed practitioner. Nothing you enter leaves this phone unless you save or share it.',
};
