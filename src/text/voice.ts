/** Voice notes: something said about an item or a photo, kept on the phone. */
export const voiceWords = {
  record: 'Voice note',
  title: 'Voice notes',
  recording: 'Recording',
  stop: 'Stop and keep',
  drop: 'Drop it',
  kept: 'Stays on this phone and in the bundles you save. It is never sent anywhere.',
  saving: 'Keeping it …',
  added: 'voice note',
  length: (time: string) => `Voice note, ${time}`,
  takeOut: 'Take out',
  takeOutLabel: (name: string) => `${name}: take out`,
  takenOut: 'voice note taken out',
  notHere: 'Its sound is not on this phone: restore the bundle that has it.',
  mostReached: 'Five minutes are the most one note holds: it was kept as far as it goes.',
  problems: {
    noMicrophone: 'No microphone was found on this phone. Type a note instead.',
    denied:
      'This phone does not let Underlid use the microphone. Allow it in the settings of the browser, then try again.',
    cannot: 'This browser cannot record sound. Type a note instead.',
    empty: 'Nothing was recorded, so nothing was kept. Try again.',
    failed: 'The recording ended by itself and could not be kept. Try again, or type a note.',
    tooLarge: 'The recording is larger than a note may be and was not kept. Say it in two parts.',
  },
};
