/** Arrival: the closed pack looked over, before anything is loaded. */
export const arrivalWords = {
  title: 'Arrival',
  lead: 'Look the closed pack over before anything is connected to it.',
  about: 'About this pack',
  items: 'Look it over',
  goOn: 'Go on',
  photoFirst: 'Photo first',
  toLiveTests: 'Go on: Live tests',
};
