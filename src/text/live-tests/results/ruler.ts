/** Distances from photos. */
export const rulerWords = {
  matter: 'Photo ruler',
  one: 'Distance',
  none: 'no distance',
  labels: {
    uncertainty: 'Uncertainty',
    placement: 'Of the points set by hand',
    offPlane: 'Of lying off the card’s plane',
    why: 'Why',
  },
  why: 'the photo is not at hand, or the corners give no plane',
  offPlaneNotSaid: 'not said how far off the plane it lies',
  plusMinus: (figure: string) => `± ${figure}`,
  formula: 'corners of a card of 85.60 × 53.98 mm → plane → distance; off plane: distance · h ÷ D',
  inputs: { offPlane: 'Off the card’s plane', camera: 'Camera away' },
  cameraTaken: '300 mm taken',
  uncertaintyBasis: 'each point ± 1 pixel, and the part off the plane, summed as squares',
};
