import type { CalloutKind } from '../schema/callout.ts';

const KIND_WORDS: Readonly<Record<CalloutKind, string>> = {
  leader: 'Leader',
  arrow: 'Arrow',
  outline: 'Outline',
  stroke: 'Stroke',
  text: 'Text',
  cover: 'Cover',
};

/** The editor of callouts on a photo. */
export const calloutWords = {
  editor: 'Callouts on this photo',
  tools: 'What to draw',
  kinds: KIND_WORDS,
  /** What to do with the tool in hand, in one line. */
  hints: {
    leader: 'Press on the spot, shift until it sits, lift.',
    arrow: 'Pull from the tail to the point.',
    outline: 'Pull a box from corner to corner.',
    stroke: 'Draw with one finger.',
    text: 'Tap where the words begin.',
    cover: 'Pull a box over what nobody should see.',
  } satisfies Record<CalloutKind, string>,
  coverNote: 'Burnt in wherever the photo leaves this phone; the photo here stays whole.',
  stage: 'Photo',
  stageKeys:
    'Arrow keys move the crosshair, Shift makes larger steps, Enter sets a point, Escape drops it. Tab goes to the callouts.',
  markKeys: 'Arrow keys move the point in hand, Enter takes the next point, Delete removes the callout.',
  undo: 'Undo',
  redo: 'Redo',
  done: 'Done',
  remove: 'Remove',
  close: 'Close',
  wordsOf: (kind: CalloutKind) => (kind === 'leader' ? 'What it shows' : 'Words on the photo'),
  item: 'Belongs to',
  noItem: 'no question',
  noWords: 'no words yet',
  emptyText: 'Words',
  none: 'Nothing drawn yet.',
  larger: 'Larger',
  smaller: 'Smaller',
  whole: 'Whole photo',
  move: 'Move the photo with one finger',
  legend: 'Legend',
  /** The name of a callout: "Leader 2: Sense lead across the next". */
  nameOf({ kind, number, text }: { kind: CalloutKind; number: number | null; text: string }): string {
    const head = number === null ? KIND_WORDS[kind] : `${KIND_WORDS[kind]} ${number}`;
    return text === '' ? head : `${head}: ${text}`;
  },
  pointInHand: (place: number, count: number) => `point ${place} of ${count} in hand`,
  placed: (name: string) => `${name} placed`,
  removed: (name: string) => `${name} removed`,
  pointSet: (count: number) => (count === 1 ? '1 point set' : `${count} points set`),
} as const;
