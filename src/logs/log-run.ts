import type { RunEndEvidence } from '../calc/run-end.ts';
import type { RunEnd } from '../calc/run-end-name.ts';
import type { TimeGap } from '../calc/time-gaps.ts';

/** One run cut from a log, from its first to its last loaded row. Magnitudes; `flow` says which way. */
export interface LogRun {
  /** `hold`: the voltage was held and the current fell. `voltageOnly`: a whole stretch of a log without current. */
  kind: 'discharge' | 'charge' | 'hold' | 'voltageOnly';
  flow: 'out' | 'in' | null;
  firstIndex: number;
  lastIndex: number;
  firstLine: number;
  lastLine: number;
  startS: number;
  endS: number;
  durationS: number;
  chargeAh: number | null;
  energyWh: number | null;
  /** Energy over charge; the mean over time where there is no current. */
  meanVoltageV: number | null;
  meanCurrentA: number | null;
  startVoltageV: number | null;
  endVoltageV: number | null;
  /** Unloaded time right before it, as far as the log shows; `null` where the run is already on when the log begins. */
  restBeforeS: number | null;
  gaps: TimeGap[];
  end: RunEnd;
  evidence: RunEndEvidence;
  /** By the log's own counter, restarts bridged; `null` where it has none. */
  counterChargeAh: number | null;
  temperatures: RunTemperatures | null;
}

export interface RunTemperatures {
  startDegC: number;
  endDegC: number;
  highestDegC: number;
}

/** Points of a run or of a whole log to draw; one length. */
export interface LogCurve {
  timeS: number[];
  /** Empty where the log has no voltage; not a number where a single one is absent. */
  voltageV: number[];
  currentA: number[] | null;
  /** From the first point on, out of the pack positive. */
  chargeAh: number[] | null;
  temperatureDegC: number[] | null;
}
