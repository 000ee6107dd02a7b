/** What an invented tester wrote of remedies on the demo bench. Every price beside it is made up. */
export const demoRemedyWords = {
  wren: {
    fuse: 'DC fuse and holder, two lugs, 30 cm of lead (invented)',
    vents: 'The workshop in the valley would do it together with the bushes.',
  },
  dipper: { dry: 'There is a dry shelf in the hut already.' },
} as const;
