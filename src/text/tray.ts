/** The tray: files shared in from other apps, until they are put where they belong. */
export const trayWords = {
  title: 'Tray',
  fromTray: (count: number) => (count === 0 ? 'Tray, for photos from other apps' : `From the tray: ${count} waiting`),
  lead: 'Photos shared in from the camera or another app wait here until you put them into a pack. Nothing is sent anywhere.',
  none: 'Nothing waits in the tray.',
  noneHint: 'In the camera or gallery choose Share, then Underlid (once Underlid is installed). Or pick photos here.',
  add: 'Pick photos',
  full: 'Not everything that was shared could be kept. If this phone is full, free some space; then share it again from the app it came from.',
  notKept: 'This phone has no room for these files. Free some space, then pick them again.',
  pack: 'Into which pack',
  noPack: 'There is no pack on the bench yet. Begin one; what waits here stays.',
  toBench: 'To the bench',
  zone: 'Where it belongs',
  item: 'What it shows',
  noItem: 'No item yet',
  put: (count: number) =>
    count === 0 ? 'Tick what belongs together' : count === 1 ? 'Put 1 photo there' : `Put ${count} photos there`,
  putDone: (count: number, pack: string) =>
    count === 1 ? `✓ 1 photo is in ${pack}.` : `✓ ${count} photos are in ${pack}.`,
  wasThere: (count: number) =>
    count === 1
      ? 'One of them was in this pack already and stays where it was.'
      : `${count} of them were in this pack already and stay where they were.`,
  takeOut: 'Take the ticked ones out',
  takeOutAsk: (count: number) =>
    count === 1
      ? 'Take this file out of the tray? It stays in the app it was shared from.'
      : `Take these ${count} files out of the tray? They stay in the app they were shared from.`,
  takeOutNow: 'Take them out',
  bundles: 'Bundles',
  takeOutBundle: 'Take out',
  restore: (name: string) => `Restore ${name}`,
  notOpened: 'This pack cannot be opened here: its checklist is not on this phone.',
  busy: (name: string) => `Taking in ${name} …`,
  opened: (name: string) => `${name} was opened with Underlid. It is checked whole before anything is taken in.`,
  openedUnread: (count: number) =>
    count === 1
      ? 'A file that was opened with Underlid could not be read. Choose it below instead.'
      : `${count} files that were opened with Underlid could not be read. Choose them below instead.`,
  takeIn: (name: string) => `Restore ${name}`,
};
