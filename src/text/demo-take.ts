/** The invented take of the demo bench. */
export const demoTakeWords = {
  label: 'Lid off, at the hut',
  lidComesOff: 'The lid comes off',
};
