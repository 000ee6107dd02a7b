import { formatFixed } from './format-number.ts';

/** Keep, Recheck a sheet: whether the JSON of a closed sheet still says what was sealed. */
export const recheckWords = {
  title: 'Recheck a sheet',
  hint: 'Is the file of a closed sheet still as it was sealed?',
  lead: 'A closed sheet prints the SHA-256 of its JSON file. Choose that file: every number in it is worked out again on this phone, without a network, from the answers and the checklist in the file alone.',
  printed: 'SHA-256 printed on the sheet, if you have it',
  printedHint: 'All 64 digits, or the first of them, 8 at least. Spaces, dashes and capitals do not matter.',
  printedWrong: {
    tooShort: (digits: number) => `${digits} of at least 8 digits so far.`,
    tooLong: (digits: number) => `${digits} digits: a SHA-256 has 64.`,
    notHex: (found: string) => `“${found}” is none of the digits 0–9 and a–f of a SHA-256.`,
  },
  choose: 'Choose the JSON of a sheet',
  working: (name: string) => `Rechecking ${name} …`,
  nothingStored: 'Nothing was stored; no record on this phone was read or changed.',

  same: (lines: number) => `Same: all ${count(lines)} lines came out again.`,
  /** Where nothing shows that the file is the sheet’s own. */
  onlyItself:
    'That shows only that the file agrees with itself. A changed file that was worked out anew agrees as well.',
  differ: (apart: number, lines: number) =>
    `${count(apart)} of ${count(lines)} lines ${apart === 1 ? 'differs' : 'differ'}.`,
  ofFile: 'SHA-256 of this file',
  ofContent: 'SHA-256 of its content in the sealed form',
  laidOutAnew:
    'The content was laid out anew, by an editor perhaps: these bytes are not the sealed ones. Its numbers were rechecked all the same.',
  match: (digits: number) =>
    digits === 64
      ? 'It is the one printed on the sheet: all 64 digits agree.'
      : `It begins as the one printed on the sheet: the ${digits} digits you typed agree.`,
  contentMatch: (digits: number) =>
    `This one is printed on the sheet: ${digits === 64 ? 'all 64 digits' : `the ${digits} digits you typed`} agree. Nothing but the layout was changed.`,
  fewDigits: (digits: number) =>
    `${digits} digits rule out a slip, not a file that was altered until they agree. Type all 64 to be sure.`,
  noMatch: (digits: number) =>
    `Not the file of that sheet: the SHA-256 printed on it is another (${digits} digits compared).`,
  notCompared:
    'Not compared with the SHA-256 printed on the sheet: this may be another file than the sheet’s. Type the printed digits above.',

  sheet: (label: string, revision: number, moment: string) => `${label}, revision ${revision}, closed ${moment}.`,
  revised: (reason: string) => `Why it was revised: ${reason}`,
  checklist: (title: string, id: string, version: string) => `Checklist: ${title} (${id} ${version}).`,
  earlier: (title: string, id: string, version: string) =>
    `Before it was carried over, checklist: ${title} (${id} ${version}).`,
  notThatChecklist: (id: string, version: string) =>
    `Not the checklist it calls itself: this phone has ${id} ${version}, and the one in the file says something else. The numbers follow from the one in the file.`,
  known: {
    builtIn: 'It is the one that comes with this app, word for word.',
    kept: 'It is one that is kept on this phone, word for word.',
    otherContent: 'It is not the one of that name and version on this phone.',
    unknown: 'This phone does not know it: the numbers follow from it, whatever it is worth.',
  },
  madeBy: (version: string, ours: string) =>
    version === ours ? `Made by Underlid ${version}, as on this phone.` : `Made by Underlid ${version}; here ${ours}.`,
  otherVersion:
    'Another version of Underlid may work out lines that this one does not, or the other way round. Recheck with the same version to be sure.',

  lines: 'Lines that differ',
  sealed: 'sealed',
  recomputed: 'worked out again',
  noLine: 'no such line',
  more: (left: number) => `and ${count(left)} more`,

  refused: {
    unreadable: 'The file could not be read. Choose it again, or copy it to this phone first.',
    tooLarge: 'Larger than any sealed sheet (16 MB). Choose the JSON file that was saved with the sheet.',
    notText: 'This is no text file. Choose the JSON file that was saved with the sheet.',
    notOurs: 'This is JSON, but no sealed sheet of Underlid. Choose the JSON file that was saved with the sheet.',
    newer:
      'This sheet was closed by a newer Underlid than this one. Update this app, then recheck it; nothing of it was judged.',
    failed: 'It could not be rechecked. Choose the file again; should that not help, the file is not as it was saved.',
  },
  damaged: {
    json: 'This is no whole JSON file: it was cut short or changed. Fetch it once more where the sheet was published.',
    shape: 'This sealed sheet is damaged, or was changed by hand: it is not of the shape a sheet is sealed in.',
    definition: 'The checklist in this sheet is refused, so no number of it can be worked out.',
    earlier: 'The earlier checklist in this sheet is refused, so no number of it can be worked out.',
    entries: 'An entry in this sheet is refused, so no number of it can be worked out.',
  },
  where: (place: string, reason: string) => (place === '' ? `Reason: ${reason}.` : `At ${place}: ${reason}.`),
};

function count(value: number): string {
  return formatFixed(value, 0);
}
