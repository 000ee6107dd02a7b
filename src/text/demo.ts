/**
 * Words of the demo bench: what two invented packs say of themselves and what an invented tester noted. Every name in
 * here is made up; where a reader could take it for real it says so.
 */
export const demoWords = {
  /** Drawn into a corner of every picture. */
  corner: 'invented drawing',
  /** Printed on the things in the pictures. */
  print: {
    wren: ['WREN 24', '25.6 V   100 Ah   2560 Wh', 'LiFePO4 · 8 cells · IP65', 'Hutwren Works (invented)'],
    wrenSmall: 'W-0017 · week 9, 2026',
    dipper: ['DIPPER 24', '25.6 V  100 Ah'],
    dipperSmall: 'Ouzelbeck Cells (invented)',
    covered: 'COVERED',
    hold: 'HOLD',
    volts: 'V DC',
    wrenBoard: ['8S  100 A', 'HW-B3'],
    dipperBoard: ['8S  125 A', 'OC-8'],
    dipperFuse: '125 A',
    thermalSwitch: '90 °C',
  },
  trip: {
    title: '180 A held, nameplate 100 A',
    currentA: '180 A',
    opened: 'opens: 94 s',
    heat: 'switch plate',
    heatAtTrip: '91 °C',
    axis: 'seconds',
  },
} as const;

export const wrenWords = {
  name: 'Wren 24',
  maker: 'Hutwren Works (invented)',
  model: 'Wren 24-100',
  serial: 'W-0017 (invented)',
  revision: 'B',
  madeOn: 'week 9, 2026',
  ipCode: 'IP65',
  cycleLife: '4000 to 80 % at 25 °C',
  warranty: '5 years',
  marks: 'A wren (invented); no test body is named',
  seller: 'Fell & Lantern Stores (invented)',
  obtainedFrom: 'Fell & Lantern Stores, paid by the hut’s fund',
  note: 'Invented for the demo bench. No such pack, maker or shop exists.',
  notes: {
    'ip-sealing': 'IP65 on the label. The data port beside it has no plug and no seal.',
    'sharp-edges': 'Every edge is deburred, beautifully. One of them is still bare: see the thin sense wires.',
    'metal-wall-lining': 'Board cut to the millimetre, riveted, no gap. Better than I would have done it.',
    'stack-hold-down': 'End plates and two steel bands. Nothing moves when I push.',
    fillers: 'Foam pads without a mark. The strip over vent 1 is counted under the vents.',
    'link-cover': 'A loose clear sheet over all of them, lifted for the pictures.',
    'cell-voltages': 'Rested a night: 3.296 to 3.302 V.',
    'cell-spread': '6 mV, rested on the plateau.',
    'cell-joints': 'Torque paint on all sixteen nuts, every line unbroken.',
    'overcurrent-cutoff':
      '180 A on the load bank. Nothing happened for a minute and a half; then the switch plate reached 91 °C and a thermal switch opened. With a cold pack in a hut in January it would take longer.',
    'low-temperature-charge-cutoff': 'Sensor in ice and salt: charging stopped at −3 °C.',
    'high-temperature-cutoff':
      'Sensor in hot water, up to 82 °C: the board went on. Only the thermal switch on the plate opens.',
    'bms-rating': '100 A on the board, 100 A on the label: no margin.',
    'second-means': 'FETs alone, which is usual. All whole and clean.',
    balancing: 'The leaflet names 30 mA a cell. I did not measure it.',
    'cell-sensor-place': 'The one bead sits on the lid of the end cell, the coolest of the eight.',
    'sensor-count': 'One bead for eight cells.',
    'sensor-fixing': 'Soft tape, nothing else.',
    'sensor-on-vent': 'The bead covers about a third of the vent. The same tape holds it down.',
    'sense-lead-pass-through':
      'Nine thin wires over a bare steel edge, pulled tight. The thick leads beside them have bushes. A nick in one of these wires joins a cell to the case.',
    'main-lugs': 'Hexagonal crimp, strands flush, sleeve on. Textbook.',
    'cell-vents': 'One strip of tape over the vent of cell 1. It lifts by hand. The other seven are free.',
    'vent-headroom': '14 mm from vent to lid.',
  },
  notSeen: {
    'lid-seal': 'The lid came off before anybody looked at the seal',
  },
  photos: {
    closed: { caption: 'Invented drawing: the closed pack', port: 'Data port without plug or seal' },
    covered: { caption: 'Invented drawing: both posts covered, 26.4 V measured before' },
    above: { caption: 'Invented drawing: lid off, clear sheet lifted, nothing else moved', tape: 'tape?' },
    vents: {
      caption: 'Invented drawing: vents of cells 1 to 3',
      strip: 'Tape over the vent of cell 1',
      bead: 'Sensor bead under it, a third of it over the vent',
      free: 'free, as it should be',
    },
    edge: {
      caption: 'Invented drawing: leads through the steel plate',
      bare: 'Sense wires pulled over bare steel',
      bushed: 'Main leads, each in a bush',
    },
    lug: { caption: 'Invented drawing: positive main lug', crimp: 'Hexagonal crimp, sleeve on' },
    joints: { caption: 'Invented drawing: bolted joints of cells 4 to 6', paint: 'Torque paint unbroken' },
    board: {
      caption: 'Invented drawing: the BMS, all current through it',
      thermal: 'Thermal switch: the only thing that opened',
      plug: 'Nine sense wires, latched plug',
    },
    trip: { caption: 'Invented drawing: my notebook, current and heat over time', trip: 'Opens only here' },
  },
  opinion:
    'Invented scenario. This is the tidiest pack I have had open, and I would not leave it alone in a hut full of sleeping people. Bands, torque paint and lining are better than they need be; the vent, the nine thin wires and the missing trip were forgotten. All three can be put right in an afternoon by somebody equipped for it. Between the cans I have not looked yet.',
  method:
    'Invented scenario: a volunteer-run mountain hut that does not exist compares two packs for its lighting. Load bank and clamp meter for the closed pack, then cover off in the woodshed with the door open; sensors tried in ice, salt and warm water; bands off last. The pictures are drawings made by the project.',
  signedAs: 'an invented volunteer of the hut',
} as const;

export const dipperWords = {
  name: 'Dipper 24',
  maker: 'Ouzelbeck Cells (invented)',
  model: 'Dipper 24-100',
  serial: 'D-0402 (invented)',
  revision: '2',
  madeOn: 'on the leaflet only: March 2026',
  cycleLife: '3000 to 80 %',
  warranty: '3 years',
  marks: 'None',
  seller: 'The Beck Shed (invented)',
  obtainedFrom: 'The Beck Shed, paid by the hut’s fund',
  note: 'Invented for the demo bench. No such pack, maker or shop exists.',
  notes: {
    'case-damage': 'Scuffs from the parcel, nothing deeper.',
    'rating-label':
      '25.6 V, 100 Ah, a maker and a bird. No Wh, no chemistry, no date, no serial number: those stand in the leaflet.',
    'lid-seal': 'One of the ten lid screws was never there. The bead is whole and it is dry inside.',
    debris: 'Two crumbs of plastic from the lid screws.',
    'cell-voltages': 'Rested a night: 3.267 to 3.285 V.',
    'cell-spread': '18 mV, rested on the plateau.',
    'link-cover': 'A loose clear sheet over all of them, lifted for the pictures.',
    balancing: '60 mA a cell while full.',
    'cell-insulation': 'A full sheet in each of the seven gaps.',
    compression: 'No end plates. The case walls and a wedge of board hold the stack.',
    'overcurrent-cutoff':
      '155 A on the load bank: open after 8.5 s; 240 A: after 0.3 s. Back when the load was taken off, both times.',
    'low-temperature-charge-cutoff': 'Sensor in ice water: charging blocked at 1 °C, back at 6 °C.',
    'high-temperature-cutoff':
      'Sensor in warm water: charging cut at 56 °C, back at 49 °C; the load at 64 °C, back at 55 °C.',
    'main-fuse': '125 A, 58 V DC, 20 kA printed on it.',
    'alarm-and-port': 'One lamp on the lid.',
    'main-lugs': 'Good crimp, strands flush, no sleeve over the barrel.',
    'main-lead-pass-through': 'A rubber bush for each lead.',
    'sense-lead-pass-through': 'Edging all round the slot, pressed on and glued.',
    'cell-vents': 'All eight free, nothing near them.',
  },
  doesNotApply: {
    'pack-vent-part': 'The case has no vent part by design',
    'read-out': 'It has no wireless read-out',
  },
  photos: {
    closed: {
      caption: 'Invented drawing: the closed pack',
      label: 'No Wh, chemistry, date or serial number',
      screw: 'Screw missing',
    },
    covered: { caption: 'Invented drawing: both posts covered, 26.2 V measured before' },
    above: {
      caption: 'Invented drawing: lid off, clear sheet lifted, nothing else moved',
      wedge: 'Wedge of board, no end plates',
      fuse: 'Fuse in the plus lead',
    },
    vents: { caption: 'Invented drawing: vents of cells 3 to 5', free: 'Free, nothing near' },
    edge: { caption: 'Invented drawing: leads through the inner wall', edging: 'Edging round the slot' },
    lug: { caption: 'Invented drawing: positive main lug', bare: 'No sleeve over the barrel' },
    board: { caption: 'Invented drawing: the BMS, all current through it', plug: 'Nine sense wires' },
    apart: {
      caption: 'Invented drawing: the stack taken apart',
      sheet: 'Rigid sheet over the full face',
      bead: 'Bead and pad on a middle cell',
    },
  },
  opinion:
    'Invented scenario. Plain, a little rough, and nothing in it that worries me. It is the one the hut keeps. I would put the missing screw in and write the true figures on the case.',
  method:
    'Invented scenario: a volunteer-run mountain hut that does not exist compares two packs for its lighting. The same load bank, meter and water baths as for Wren 24. The pictures are drawings made by the project.',
  signedAs: 'an invented volunteer of the hut',
  afterwards: {
    where: 'Store room of the hut, marked as opened (invented)',
    note: 'Invented: kept open as the hut’s teaching pack, cells in their case, posts covered. A second, unopened one was bought for the lighting.',
  },
} as const;
