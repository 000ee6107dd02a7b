/** Keep: checklists on board, loading and removing one; the choice of one for a new pack. */
export const checklistsWords = {
  title: 'Checklists on board',
  hint: 'What is asked and graded; load one of your own.',
  lead: 'A pack stays on the version it was begun with. One that no pack uses is in no backup: keep its file.',
  draft: 'draft',
  released: 'released',
  draftMark: 'draft checklist',
  items: (count: number) => `${count} ${count === 1 ? 'item' : 'items'}`,
  origins: { builtIn: 'built in', loaded: 'loaded', came: 'came with a pack' },
  uses: (count: number) => (count === 0 ? 'used by no pack' : `used by ${count} ${count === 1 ? 'pack' : 'packs'}`),
  untitled: 'A checklist this Underlid cannot read',
  otherThanBuiltIn: 'Not the one Underlid brings under this id and version.',
  sha256: (hash: string) => `SHA-256 ${hash}`,
  earlier: (count: number) => `Earlier versions: ${count}`,
  save: 'Save its file',
  remove: 'Remove',
  of: (action: string, id: string, version: string) => `${action}: ${id} ${version}`,
  notRead: 'The checklists could not be read. Load the page again.',

  load: 'Load a checklist',
  loadLead:
    'A checklist of your own: save the file of one that is near, give it an id of its own, version 0.1.0 and status draft, change it in any editor of plain text, and load it here. It is checked whole before it is kept.',
  reading: (fileName: string) => `Checking ${fileName} …`,
  loaded: (title: string, id: string, version: string) =>
    `${title} (${id} ${version}) is on board. A new pack can be begun with it: choose it on the pack’s Nameplate.`,
  namesake:
    'Another one with the same id and version is here too. Only the SHA-256 tells them apart: give each change a version of its own.',
  isHere: (title: string, id: string, version: string) =>
    `${title} (${id} ${version}) is here already, to the byte. Nothing was changed.`,
  refused: (fileName: string, reason: string) => `${fileName}: ${reason} Nothing on this phone was changed.`,
  reasons: {
    tooLarge: (most: string) => `it is larger than the ${most} a checklist may have.`,
    empty: 'it is empty.',
    notText: 'it is not text in UTF-8.',
    byteOrderMark: 'it begins with a byte order mark. Save it as UTF-8 without one.',
    notJson: 'it is not JSON.',
    problems: (count: number) => `${count} ${count === 1 ? 'thing is' : 'things are'} wrong in it.`,
    builtInName: (id: string, version: string) =>
      `Underlid brings a ${id} ${version} of its own, and this one differs. Give it another id, or another version.`,
    unreadable: 'it could not be read.',
  },
  atLine: (line: number, column: number) => `Line ${line}, column ${column}:`,
  noLine: 'This browser does not say where.',
  more: (count: number) => `and ${count} more`,

  removeTitle: (title: string) => `Remove ${title}?`,
  removeAsk: (id: string, version: string) =>
    `${id} ${version} goes off this phone. Save its file first if it is nowhere else. No pack here uses it.`,
  removed: (id: string, version: string) => `${id} ${version} is removed.`,
  inUse: (id: string, version: string, packs: readonly string[]) =>
    `${id} ${version} stays: without it ${packs.join(', ')} could not be graded. Packs put away count too.`,

  choice: 'Checklist',
  choiceLead: 'It can be changed until the first question of it is answered.',
  change: 'Change',
  shown: (title: string, version: string) => `${title} ${version}`,
  chosen: 'Begun with',
} as const;

const SINGULAR: Readonly<Record<string, string>> = {
  items: 'item',
  facts: 'fact',
  zones: 'zone',
  hazards: 'hazard',
  remedies: 'remedy',
  choices: 'choice',
  inputs: 'input',
};

/** `items[3].grades.weak` in words: "Item 4 (cell-vents), grades, weak". `idAt` tells the id of a member of a list. */
export function placeInWords(place: string, idAt: (list: string, index: number) => string | null): string {
  if (place === 'definition') return 'The file as a whole';
  const said = place.split('.').map((segment, depth) => {
    const [, name = segment, index] = /^(.*)\[(\d+)\]$/.exec(segment) ?? [];
    if (index === undefined) return name;
    const one = `${SINGULAR[name] ?? name} ${Number(index) + 1}`;
    const id = depth === 0 ? idAt(name, Number(index)) : null;
    return id === null ? one : `${one} (${id})`;
  });
  const text = said.join(', ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}
