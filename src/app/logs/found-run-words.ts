import type { LogRun } from '../../logs/log-run.ts';
import { formatTemperature } from '../../text/format-unit.ts';
import { duration, figureIn, signedPercent } from '../../text/live-tests/results/figures.ts';
import { foundWords as say } from '../../text/logs/found.ts';
import type { UnitChoice } from '../../units/unit-choice.ts';
import { restBefore } from './found-run.ts';

/** Dense counters of good instruments agree with the trapezoid within a few parts in ten thousand. Our choice. */
const COUNTER_FAR_FRAC = 0.02;

/** "Discharge · 97.3 Ah · 1245 Wh · 4 h 52 min · 20 A". */
export function foundRunTitle({ kind, chargeAh, energyWh, durationS, meanCurrentA }: LogRun): string {
  return say.figures([
    say.kinds[kind],
    ...(chargeAh === null ? [] : [figureIn(chargeAh, 'Ah')]),
    ...(energyWh === null ? [] : [figureIn(energyWh, 'Wh')]),
    duration(durationS),
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
    ...(run.kind === 'voltageOnly' ? [] : beganLines(runs, place)),
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

function endLines({ kind, flow, end }: LogRun): string[] {
  const note = { discharge: '', charge: say.chargeNote, hold: say.holdNote, voltageOnly: say.voltageOnlyNote }[kind];
  const ended = flow === 'in' ? say.chargeEnds[end] : say.ends[end];
  return [ended, note, kind === 'hold' && flow === 'in' ? say.chargeNote : ''].filter((line) => line !== '');
}

function beganLines(runs: readonly LogRun[], place: number): string[] {
  if (runs[place]?.flow !== 'out') return [];
  const rest = restBefore(runs, place);
  switch (rest.known) {
    case 'no':
      return [say.noRest];
    case 'atLeast':
      return [say.restAtLeast(duration(rest.restS))];
    case 'afterOther':
      return [say.rest(duration(rest.restS))];
    case 'afterCharge':
      return [
        rest.charge.endVoltageV === null
          ? say.rest(duration(rest.restS))
          : say.afterCharge(duration(rest.restS), figureIn(rest.charge.endVoltageV, 'V')),
      ];
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
