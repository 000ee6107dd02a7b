/** The instruments and how well they are stated to measure. */
export const instrumentResultWords = {
  matter: 'Instruments',
  voltage: (parts: string) => `voltage ± (${parts})`,
  current: (parts: string) => `current ± (${parts})`,
  temperature: (part: string) => `temperature ± ${part}`,
  reading: (percent: string) => `${percent} of the reading`,
  plus: (parts: readonly string[]) => parts.join(' + '),
  notStated: 'accuracy not stated',
};
