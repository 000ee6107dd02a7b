/**
 * A figure as far as it is known: an interval whose ends may be the same, or infinite. `open` leaves an end out of it:
 * "charging went on at −5 °C" is a cut-off somewhere below −5, not at it.
 */
export interface Figure {
  low: number;
  high: number;
  open?: 'low' | 'high';
}

/** One reading of an item: the case its bands are picked by, and the figure where the case has one. */
export interface Reading {
  case: string;
  figure?: Figure;
}

/**
 * What the live tests or typed values say of an item. Of the alternatives one is true, not known which; within one the
 * worst reading counts. `orWorse`: not everything was read yet, and what was not may be worse.
 */
export interface Derived {
  alternatives: readonly (readonly Reading[])[];
  orWorse?: boolean;
}

export function exactly(value: number): Figure {
  return finite({ low: value, high: value });
}

export function between(low: number, high: number): Figure {
  return finite({ low, high });
}

export function atLeast(low: number): Figure {
  return finite({ low, high: Infinity });
}

export function atMost(high: number): Figure {
  return finite({ low: -Infinity, high });
}

export function below(high: number): Figure {
  return finite({ low: -Infinity, high, open: 'high' });
}

export function above(low: number): Figure {
  return finite({ low, high: Infinity, open: 'low' });
}

/** NaN never becomes a figure. */
function finite({ low, high, open }: Figure): Figure {
  if (Number.isNaN(low) || Number.isNaN(high) || low > high) {
    throw new RangeError(`figure: low must be a number up to high, got ${low} and ${high}`);
  }
  const figure = { low: withoutBinaryNoise(low), high: withoutBinaryNoise(high) };
  return open === undefined ? figure : { ...figure, open };
}

/**
 * Readings are decimal numbers of a few digits. What comes of them carries noise from the 15th digit on, and 3.31 V less
 * 3.30 V must not be over 10 mV for it: twelve digits are kept, three more than any meter gives.
 */
function withoutBinaryNoise(value: number): number {
  return Number(value.toPrecision(12));
}
