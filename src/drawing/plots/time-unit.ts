export interface TimeUnit {
  name: 'seconds' | 'minutes' | 'hours';
  inS: number;
}

/** The unit in which a span of time reads best: hours from two hours on, minutes from two minutes on. Our choice. */
export function timeUnitFor(spanS: number): TimeUnit {
  if (spanS >= 2 * 3600) return { name: 'hours', inS: 3600 };
  if (spanS >= 2 * 60) return { name: 'minutes', inS: 60 };
  return { name: 'seconds', inS: 1 };
}
