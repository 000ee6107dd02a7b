/** Where load ends and rest begins in one log. */
export interface RestLevel {
  /** At and above this a row is loaded. */
  loadedA: number;
  /** A current that sinks gently stays loaded down to this: the end of a taper. */
  taperA: number;
}

/** Our choice: a shunt's offset at rest is under 5 % of the load; if more than 1 % of the charge flows below that, it is no offset. */
const START_FRAC = 0.05;
const STOP_FRAC = 0.001;
const MOST_CHARGE_FRAC = 0.01;
/** Our choice: chargers end their taper at 5 % of their current, some at 2 %; a twentieth of the loaded level is far below. */
const TAPER_FRAC = 0.05;

/** Finds the level from the log itself: nobody says how large the pack is, and an offset at rest is no load. */
export function restLevel(timeS: Float64Array, currentA: Float64Array): RestLevel {
  let peakA = 0;
  for (const amperes of currentA) if (Math.abs(amperes) > peakA) peakA = Math.abs(amperes);
  for (let frac = START_FRAC; frac > STOP_FRAC; frac /= 2) {
    if (chargeBelow(timeS, currentA, frac * peakA) <= MOST_CHARGE_FRAC) return levelAt(frac * peakA);
  }
  return levelAt(STOP_FRAC * peakA);
}

function levelAt(loadedA: number): RestLevel {
  return { loadedA, taperA: TAPER_FRAC * loadedA };
}

/** Share of all charge moved in either direction that moved at less than `limitA`. */
function chargeBelow(timeS: Float64Array, currentA: Float64Array, limitA: number): number {
  let all = 0;
  let below = 0;
  for (let at = 1; at < currentA.length; at++) {
    const spanS = (timeS[at] ?? 0) - (timeS[at - 1] ?? 0);
    const amperes = (Math.abs(currentA[at] ?? 0) + Math.abs(currentA[at - 1] ?? 0)) / 2;
    if (!(spanS > 0) || Number.isNaN(amperes)) continue;
    all += spanS * amperes;
    if (amperes < limitA) below += spanS * amperes;
  }
  return all > 0 ? below / all : 0;
}
