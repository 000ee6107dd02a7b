/** What a field takes just inside its bounds, and what it refuses just outside with the reason given. */
export interface FieldKind {
  takes: readonly unknown[];
  refuses: readonly (readonly [given: unknown, reason: string])[];
}

const NUMBER = 'Invalid type: Expected number but received "5"';

function between(least: number, most: number, step: number): FieldKind {
  return {
    takes: [least, most],
    refuses: [
      [least - step, `Invalid value: Expected >=${least} but received ${least - step}`],
      [most + step, `Invalid value: Expected <=${most} but received ${most + step}`],
      ['5', NUMBER],
    ],
  };
}

/** What is stored may lie a thousandfold past what may be typed: a slip of unit of an earlier version, to be mended. */
const stored = (mostTyped: number) => mostTyped * 1000;

const overMost = (mostTyped: number) =>
  [
    stored(mostTyped) * 1.5,
    `Invalid value: Expected <=${stored(mostTyped)} but received ${stored(mostTyped) * 1.5}`,
  ] as const;

/** A figure above zero, to the most that its unit allows. */
export function above0(most: number): FieldKind {
  return {
    takes: [1e-6, most, stored(most)],
    refuses: [
      [0, 'Invalid value: Expected >0 but received 0'],
      [-1, 'Invalid value: Expected >0 but received -1'],
      [5e-324, 'Invalid value: Expected >=0.000001 but received 5e-324'],
      overMost(most),
      ['5', NUMBER],
    ],
  };
}

export function from0(most: number): FieldKind {
  return {
    takes: [0, most, stored(most)],
    refuses: [[-1e-9, 'Invalid value: Expected >=0 but received -1e-9'], overMost(most), ['5', NUMBER]],
  };
}

function whole(least: number, most: number): FieldKind {
  const { takes, refuses } = between(least, most, 1);
  return { takes, refuses: [...refuses, half(least)] };
}

function half(least: number): [number, string] {
  return [least + 0.5, `Invalid integer: Received ${least + 0.5}`];
}

function text(least: number, most: number): FieldKind {
  const tooLong = 'x'.repeat(most + 1);
  return {
    takes: ['x'.repeat(least), 'x'.repeat(most)],
    refuses: [
      ...(least === 0 ? [] : ([['', 'Invalid length: Expected >=1 but received 0']] as const)),
      [tooLong, `Invalid length: Expected <=${most} but received ${most + 1}`],
      [5, 'Invalid type: Expected string but received 5'],
    ],
  };
}

export function oneOf(...choices: string[]): FieldKind {
  const expected = choices.length === 1 ? `"${choices[0]}"` : `(${choices.map((choice) => `"${choice}"`).join(' | ')})`;
  return {
    takes: choices,
    refuses: [
      ['madeUp', `Invalid type: Expected ${expected} but received "madeUp"`],
      [choices[0]?.toUpperCase(), `Invalid type: Expected ${expected} but received "${choices[0]?.toUpperCase()}"`],
    ],
  };
}

const HASH = 'must be 64 hexadecimal digits';
const ID = 'must be 32 hexadecimal digits';

/** Limits by hand from the schema's own words: text-limits.ts, figure-limits.ts, test-fields.ts. */
export const KINDS = {
  /** From absolute zero to past the melting point of copper, 1084.62 °C (ITS-90). */
  degC: between(-273.15, 1500, 0.25),
  volts: between(-2000, 2000, 0.5),
  wholeFrom0: whole(0, 1e10),
  wholeFrom1: whole(1, 1e10),
  /** To the start of the year 9999: 86 400 000 ms × 2 932 532 days since 1970. */
  moment: whole(0, 253_370_764_800_000),
  wholeTo40: whole(1, 40),
  wholeTo100: whole(1, 100),
  wholeTo1000: whole(1, 1000),
  line: text(1, 120),
  note: text(0, 2000),
  markText: text(1, 200),
  symbology: text(0, 40),
  yesNo: {
    takes: [true, false],
    refuses: [
      ['yes', 'Invalid type: Expected boolean but received "yes"'],
      [1, 'Invalid type: Expected boolean but received 1'],
    ],
  },
  day: {
    takes: ['2026-11-24'],
    refuses: [
      ['24.11.2026', 'Invalid date: Received "24.11.2026"'],
      ['2026-13-01', 'Invalid date: Received "2026-13-01"'],
    ],
  },
  stamp: {
    takes: [`000000000001000.000000.${'1'.repeat(32)}`],
    refuses: [
      ['2026-11-24', 'must be a clock stamp'],
      [null, 'Invalid type: Expected string but received null'],
    ],
  },
  id: {
    takes: ['4'.repeat(32)],
    refuses: [
      ['4'.repeat(31), ID],
      ['G'.repeat(32), ID],
    ],
  },
  hash: {
    takes: ['f'.repeat(64)],
    refuses: [
      ['f'.repeat(63), HASH],
      ['F'.repeat(64), HASH],
    ],
  },
  awg: {
    takes: ['4/0', '1/0', '0', '1', '10', '39', '40'],
    refuses: ['5/0', '0/0', '00', '41', '4 AWG', ''].map(
      (given) => [given, 'must be a gauge such as 4/0 or 10'] as const,
    ),
  },
} as const satisfies Record<string, FieldKind>;
export type FieldKindName = keyof typeof KINDS;
