/** Meters, testers and loads, with the accuracy their makers state. */
export const instrumentWords = {
  title: 'Instruments',
  one: 'Instrument',
  lead: 'What you measured with. Its maker’s accuracy gives your Ah, Wh and cost their uncertainty; without it none is shown.',
  cautions: [] as readonly string[],
  labels: {
    name: 'Name',
    voltageReadingPct: 'Volts: ± of the reading',
    voltageAbsoluteV: 'Volts: and ±',
    currentReadingPct: 'Amps: ± of the reading',
    currentAbsoluteA: 'Amps: and ±',
    temperatureAbsoluteDegC: 'Temperature: ±',
  },
  accuracy: 'Accuracy, as its maker states it',
  accuracyLead: 'From its data sheet, e.g. ± (0.5 % of the reading + 0.02 A). A part it does not have is typed as 0.',
  voltage: (parts: string) => `V ± ${parts}`,
  current: (parts: string) => `A ± ${parts}`,
  temperature: (part: string) => `temperature ± ${part}`,
  and: ' + ',
  noAccuracy: 'accuracy not stated',
};
