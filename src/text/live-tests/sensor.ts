/** Hot and cold sensor tests: on the open, live pack, at its sensors, never at its cells. */
export const sensorWords = {
  title: 'Hot and cold sensor tests',
  one: 'Sensor test',
  lead: 'Bring a sensor to its limit while a small current flows, and see whether the pack cuts it off. One entry for each trial.',
  cautions: [
    'Never heat or cool a cell: only its sensor, taken off or shielded from the cell.',
    'A small current, far below the claim; the charger or load on a switch in reach.',
    'Keep water and metal off cells, bus bars and the BMS: a sealed cup or bag, warm air from afar.',
  ],
  labels: {
    method: 'How the sensor was brought there',
    acted: 'What happened',
    sensorDegC: 'At the sensor',
    currentA: 'Current',
    switchFitted: 'A thermal switch is fitted',
    sensorAfter: 'The sensor afterwards',
    recovery: 'How it came back',
    recoveredAtDegC: 'Came back at',
  },
  acted: 'It cut off',
  notActed: 'It went on',
  cutAt: 'At the sensor when it cut off',
  reached: 'At the sensor, furthest reached',
  methods: {
    cup: 'Cup of water',
    icePack: 'Ice pack on it',
    warmAir: 'Warm air',
    ambient: 'Cells and all',
  },
  after: { whole: 'Whole', loosened: 'Loosened', melted: 'Melted' },
  afterwards: 'Afterwards',
  gateTitle: 'Before hot and cold',
  gateLead: 'The pack is open and live. Each of these, before you tick it.',
  gatePass: 'Ready: open the sensor tests',
  gateMissing: (count: number) => (count === 1 ? '1 caution is still open.' : `${count} cautions are still open.`),
  gateUntil: (time: string) => `open until ${time}`,
  gateFirst: 'cautions first',
  onlyLive: 'These tests belong to the pack live and open. Go there first, under Lid off.',
  tooLate: 'The pack is apart: no test is to be run now. What was seen earlier can still be written down.',
};

/** Ids are stored with the record: never reuse one with another meaning. */
export const SENSOR_CAUTIONS: readonly { id: string; text: string }[] = [
  {
    id: 'codes-first',
    text: 'Local codes and a licensed practitioner come first. If either says no, I leave this out.',
  },
  { id: 'sensor-only', text: 'I will heat or cool only a sensor, never a cell.' },
  { id: 'no-water-on-live-parts', text: 'No water, foil or metal can touch a cell, a bus bar or the BMS.' },
  {
    id: 'small-current',
    text: 'The current is small and on a switch in reach; I stop it by hand if the pack does not.',
  },
  { id: 'eyes-and-gloves', text: 'Eye protection is on, and gloves that suit the voltage; metal is off.' },
  { id: 'second-person', text: 'A second person is here who can switch off and call for help.' },
  { id: 'way-out', text: 'The place cannot burn, is aired, and the way out is free behind me.' },
];
