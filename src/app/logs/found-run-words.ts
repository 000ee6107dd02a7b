import type { LogRun } from '../../logs/log-run.ts';
import { formatTemperature } from '../../text/format-unit.ts';
import { duration, figureIn, signedPercent } from '../../text/live-tests/results/figures.ts';
import { foundWords as say } from '../../text/logs/found.ts';
import type { UnitChoice } from '../../units/unit-choice.ts';
import { restBefore } from './found-run.ts';

/** Dense counters of good instruments agree with the trapezoid within a few parts in ten thousand. Our choice. */
const COUNTER_FAR_FRAC = 0.02;
/** A step of a log, not a rest. Our choice. */
const SHORT_REST_S = 60;
const SHORT_RUN_S = 120;

/** "Discharge · 97.3 Ah · 1245 Wh · 4 h 52 min · 20 A". */
export function foundRunTitle({ kind, chargeAh, energyWh, durationS, meanCurrentA }: LogRun): string {
  return say.figures([
    say.kinds[kind],
    ...(chargeAh === null ? [] : [figureIn(chargeAh, 'Ah')]),
    ...(energyWh === null ? [] : [figureIn(energyWh, 'Wh')]),
    duration(durationS < SHORT_RUN_S ? Number(durationS.toPrecision(3)) : durationS),
    ...(meanCurrentA === null ? [] : [figureIn(Number(meanCurrentA.toPrecision(4)), 'A')]),
  ]);
}

/** What else there is to say of a run: how it ended and began, holes, the log's own counter, temperatures, where it stands. */
export function foundRunLines(runs: readonly LogRun[], place: number, units: UnitChoice): string[] {
  const run = runs[place];
  if (run === undefined) return [];
  const { temperatures } = run;
  return [
    ...endLines(run),
    ...beganLines(runs, place),
    ...gapLines(run),
    ...counterLines(run),
    ...(temperatures === null
      ? []
      : [
          say.temperatures(
            formatTemperature(temperatures.startDegC, units),
            formatTemperature(temperatures.endDegC, units),
          ),
        ]),
    say.lines(run.firstLine, run.lastLine),
  ];
}

/** Said once above the list, of the kinds that are in it. */
export function kindNotes(runs: readonly LogRun[]): string[] {
  const some = (wanted: (run: LogRun) => boolean, note: string) => (runs.some(wanted) ? [note] : []);
  return [
    ...some(({ kind }) => kind === 'voltageOnly', say.voltageOnlyNote),
    ...some(({ flow }) => flow === 'in', say.chargeNote),
    ...some(({ kind }) => kind === 'hold', say.holdNote),
  ];
}

function endLines({ flow, end }: LogRun): string[] {
  const ended = flow === 'in' ? say.chargeEnds[end] : say.ends[end];
  return ended === '' ? [] : [ended];
}

/** Of a hold there is nothing to say: it begins where the run before it ended. */
function beganLines(runs: readonly LogRun[], place: number): string[] {
  if (runs[place]?.kind !== 'discharge') return [];
  const rest = restBefore(runs, place);
  switch (rest.known) {
    case 'no':
      return [say.noRest];
    case 'atLeast':
      return [say.restAtLeast(duration(rest.restS))];
    case 'afterOther':
      return rest.restS < SHORT_REST_S ? [] : [say.rest(duration(rest.restS))];
    case 'afterCharge': {
      const { endVoltageV } = rest.charge;
      const after = rest.restS < SHORT_REST_S ? say.rightAfter : say.restAfter(duration(rest.restS));
      return [say.afterCharge(after, endVoltageV === null ? null : figureIn(endVoltageV, 'V'))];
    }
  }
}

function gapLines({ gaps }: LogRun): string[] {
  const longestS = Math.max(0, ...gaps.map(({ lengthS }) => lengthS));
  return gaps.length === 0 ? [] : [say.gaps(gaps.length, duration(longestS))];
}

function counterLines({ counterChargeAh, chargeAh }: LogRun): string[] {
  if (counterChargeAh === null || chargeAh === null || !(chargeAh > 0)) return [];
  const off = counterChargeAh / chargeAh - 1;
  const line = say.counter(figureIn(counterChargeAh, 'Ah'), signedPercent(off));
  return [Math.abs(off) > COUNTER_FAR_FRAC ? `${line} ${say.counterOff}` : line];
}
