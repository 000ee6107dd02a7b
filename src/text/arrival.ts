/** Arrival: the closed pack looked over, before anything is loaded. */
export const arrivalWords = {
  title: 'Arrival',
  lead: 'Look the closed pack over before anything is connected to it.',
  about: 'About this pack',
  items: 'Look it over',
  loaded: 'While running it closed',
  loadedLead:
    'What charging and loading the closed pack shows. Only within its nameplate, on a surface that cannot burn, never unattended. Leave open what you cannot run.',
  loadedCaution: 'Only within the nameplate, on a surface that cannot burn, never unattended.',
  loadedClosed: 'Closed: a stop finding stands. Do not charge or load the pack.',
  goOn: 'Go on',
  photoFirst: 'Photo first',
  toMakeSafe: 'Go on: Make safe',
};
