/** Words of the invented second reader of the demo bench. */
export const demoReaderWords = {
  label: 'another volunteer of the hut (invented)',
} as const;
