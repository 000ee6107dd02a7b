/** Words of the demo bench's live tests. All invented; the logs are made by a simple cell model and say so. */
export const demoLogWords = {
  preamble: (title: string) => [
    '# INVENTED for the demo bench: made by a simple cell model, no measurement',
    `# ${title}`,
    '# discharge is negative',
  ],
  fileName: (pack: string, what: string) => `invented-${pack}-${what}.csv`,
};

export const demoInstruments = {
  bench: 'Bench load and logger (invented)',
  clamp: 'Hall clamp (invented)',
  meter: 'Hand meter (invented)',
  milliohm: 'Four-wire mΩ meter (invented)',
};

export const wrenTestWords = {
  gentle: 'Gentle, 0.2C',
  hard: 'Hard, 100 A',
  hardNote:
    'Invented: the thermal switch on the plate opened after 41 minutes, on the plateau. Terminals at 0 V, back after a quarter of an hour of cooling.',
  heatTrip:
    'Invented: nothing for a minute and a half; then the switch plate reached 91 °C and the thermal switch opened.',
  coldNote: 'Invented: sensor in a dry bag in a cup of ice and salt beside the pack.',
  hotNote: 'Invented: sensor in hot water to 82 °C. The board went on; the thermal switch is on the plate.',
  leadLabel: 'Main leads, both',
  linkLabel: 'Links between cells',
  readOutNote: 'Invented: the program asks for an account before it shows anything.',
};

export const dipperTestWords = {
  gentle: 'Gentle, 0.2C',
  hard: 'Hard, 80 A',
  leadLabel: 'Main leads, both',
  linkLabel: 'Links between cells',
  coldNote: 'Invented: sensor in a cup of ice water, charger on at 5 A.',
  hotNote: 'Invented: sensor in a cup of hot water.',
};
