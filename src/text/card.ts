/** The picture card: what stands on it, and the screen where it is put together. */
export const cardWords = {
  title: 'Picture card',
  back: 'Publish',
  score: 'Score',
  scoreOpen: 'Score, not settled yet',
  withheld: 'Score withheld',
  nothingToScore: 'Nothing to score',
  shortRoute: 'short route',
  shown: (shown: number, all: number) => `${shown} of ${all} ${all === 1 ? 'finding' : 'findings'}`,
  noneShown: (all: number) => (all === 1 ? 'One finding, not shown here.' : `${all} findings, none shown here.`),
  noFindings: 'Nothing that was looked at was graded weak or failed.',
  madeWith: 'Made with Underlid.',
  line: (parts: readonly string[]) => parts.join(' · '),
  risk: (risk: string) => `${risk} risk`,
  legend: (number: number, text: string) => `${number} ${text}`,
  alt: (name: string, verdict: string, score: string) => `Picture card of ${name}: ${verdict}. ${score}.`,

  lead: 'One picture for a video, a post or a forum. Cover-ups are burnt in.',
  shape: { label: 'Shape', landscape: 'Wide 16 : 9', portrait: 'Tall 4 : 5' },
  ground: { label: 'Ground', paper: 'Paper', bench: 'Bench', clear: 'See-through' },
  clearHint: 'See-through: laid over a video, only the strips are opaque. The squares are not in the picture.',
  findings: (chosen: number) => `Findings, ${chosen} of at most 3`,
  full: 'Three stand on the card. Take one off to put another on.',
  none: 'No findings to show. The card says so.',
  photoOf: (title: string) => `Photo of ${title}`,
  noPhoto: 'No photo',
  photo: (number: number) => `Photo ${number}`,
  wordsOf: (title: string) => `Words for ${title}`,
  sentence: 'The sentence',
  note: 'My note',
  make: 'Make the picture',
  drawing: 'Drawing the card …',
  notDrawn: 'The card could not be drawn on this phone. Close other apps and come back to this screen.',
  missing: (count: number) =>
    count === 1
      ? 'One photo is not on this phone, or could not be covered up: its frame stays empty.'
      : `${count} photos are not on this phone, or could not be covered up: their frames stay empty.`,
};
