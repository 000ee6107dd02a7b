import { cutStretch, type LoadedPart, touches } from './cut-stretch.ts';
import type { LogReading, LogStretch } from './log-reading.ts';
import type { LogRun } from './log-run.ts';
import { makeRun, type RunEndHelp, type RunPlace } from './make-run.ts';
import { type RestLevel, restLevel } from './rest-level.ts';
import { voltageOnlyRun } from './voltage-only-run.ts';

/** Our choice: under a thousandth of the largest charge and a tenth of the largest current it is a leak or an offset. */
const LEAST_CHARGE_FRAC = 0.001;
const LEAST_CURRENT_FRAC = 0.1;

/**
 * Cuts a reading into runs, each from its first to its last loaded row, in order. A log without current gives one run
 * of voltages for each stretch. Single loaded rows, and offsets too small to be a load, are no runs.
 */
export function runsOf(reading: LogReading, help: RunEndHelp = {}): LogRun[] {
  if (reading.refused !== undefined) return [];
  const { timeS, currentA } = reading.columns;
  if (currentA === null) return reading.stretches.map((stretch) => voltageOnlyRun(reading, stretch, help));
  const level = restLevel(timeS, currentA);
  const runs = reading.stretches.flatMap((stretch) => runsOfStretch(reading, { stretch, level, help }));
  const mostAh = Math.max(0, ...runs.map(({ chargeAh }) => chargeAh ?? 0));
  const mostA = Math.max(0, ...runs.map(({ meanCurrentA }) => meanCurrentA ?? 0));
  return runs.filter(
    ({ chargeAh, meanCurrentA }) =>
      (chargeAh ?? 0) >= LEAST_CHARGE_FRAC * mostAh || (meanCurrentA ?? 0) >= LEAST_CURRENT_FRAC * mostA,
  );
}

function runsOfStretch(
  reading: LogReading,
  { stretch, level, help }: { stretch: LogStretch; level: RestLevel; help: RunEndHelp },
): LogRun[] {
  const parts = cutStretch(reading.columns, stretch, level);
  return parts
    .map((part, place) => ({ part, place: placeOf(parts, { part, place, stretch }) }))
    .filter(({ part }) => part.lastIndex > part.firstIndex)
    .map(({ part, place }) => makeRun(reading, { part, place, help }));
}

function placeOf(
  parts: readonly LoadedPart[],
  { part, place, stretch }: { part: LoadedPart; place: number; stretch: LogStretch },
): RunPlace {
  const next = parts[place + 1];
  const before = parts[place - 1];
  const restFrom = before === undefined ? stretch.firstIndex : before.lastIndex;
  return {
    restFromIndex: restFrom === part.firstIndex ? null : restFrom,
    stretchLastIndex: stretch.lastIndex,
    followedBy:
      part.lastIndex === stretch.lastIndex
        ? 'nothing'
        : next === undefined || !touches(part, next)
          ? 'rest'
          : next.held && next.flow === part.flow
            ? 'hold'
            : next.flow === part.flow
              ? 'otherStep'
              : 'otherWay',
  };
}
