/** Setting points on a photo. */
export const rulerStageWords = {
  editor: 'Photo ruler',
  stage: 'Photo',
  keys: 'Arrow keys move the crosshair or the point in hand, Shift makes larger steps, Enter sets it and takes the next, plus and minus magnify.',
  longSide: '85.6 mm',
  steps: [
    'Press on a corner of the card, shift until it sits, lift.',
    'Now the next corner round the card.',
    'The third corner.',
    'The fourth corner.',
    'Now one end of what is measured.',
    'And its other end.',
  ],
  stepOf: (place: number, whole: boolean) => (whole ? 'All points are set' : `Point ${place} of 6`),
  near: 'Magnify first: two fingers, or +. The corners count where the edges would meet, not where they are rounded.',
  shift: 'Press on a ring to shift it. A corner is where the edges would meet, not where it is rounded.',
  turn: 'The other side is the long one',
  back: 'Take one back',
  done: 'Done',
  later: 'Later',
} as const;

/** Distances from photos. */
export const rulerWords = {
  title: 'Photo ruler',
  one: 'Distance',
  lead: 'A distance from a photo that shows a bank-card sized card (85.60 × 53.98 mm: bank card, driving licence) beside the thing, in one plane with it.',
  cautions: [
    'A card and a rule of plastic only, never of metal, and none with a metal chip face down: near open cells metal makes a short.',
    'Lay the card down before the photo; nothing is held over the cells. Cover number and name of the card before the photo leaves the phone.',
  ],
  labels: {
    photoId: 'Photo',
    corners: 'Corners of the card',
    from: 'One end',
    to: 'The other end',
    label: 'What was measured',
    offPlaneMm: 'Off the card’s plane by',
    cameraMm: 'Camera away',
  },
  photoFor: 'The thing with a bank-card sized card beside it',
  noPhoto: 'Choose a photo that shows the card flat beside the thing.',
  offPlaneLead:
    'How far the thing lies above or below the card: 10 mm at 300 mm from the camera make it 3.3 % too long or too short. 0 if they lie in one plane; left open, no uncertainty is told.',
  cameraLead: 'Left open, 300 mm are taken: as near as a phone is held to take in a card.',
  movePoints: 'Move the points',
  alt: (distance: string) => `The photo with the card outlined and the distance, ${distance}`,
  about: (distance: string) => `about ${distance}`,
  plusMinus: (distance: string, uncertainty: string) => `${distance} ± ${uncertainty}`,
  none: 'The corners do not go round a card: shift them so that the outline lies on its edges.',
  photoOut: 'The photo it was measured on is no longer in this pack: no distance can be told without it.',
  openPhoto: 'Open the photo',
  undo: { points: 'Distance: points' },
  unnamed: (number: number) => `Distance ${number}`,
  measure: 'Measure on it',
  measured: 'Measured on it',
  tools: 'Measure and read',
};

/** From a distance to a conductor. */
export const rulerUseWords = {
  title: 'Use it for a lead',
  lead: 'One step to its section and the current it may carry.',
  uses: {
    bareStrands: 'As the diameter of bare strands',
    overInsulation: 'As the diameter over insulation',
    barWidth: 'As the width of a bar or strip',
  },
  notes: {
    bareStrands: 'Strands fill 0.75 ± 0.05 of their round outline; the lower end counts for the current.',
    overInsulation: 'Over insulation a diameter gives no current: it is only kept.',
    barWidth: 'The thickness of the bar is still to be typed.',
  },
  into: 'For which one',
  newAt: { main: 'A new main lead', link: 'A new cell link', sense: 'A new sense lead', other: 'Another new one' },
  insulation: 'Insulation marked for',
  insulationLead: 'Without it no current can be told; it is printed on the lead.',
  use: 'Use it',
  undo: 'Lead from a photo',
  fromLeads: 'Measure one on a photo',
};
