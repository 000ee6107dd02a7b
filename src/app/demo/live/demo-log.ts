import { demoLogWords } from '../../../text/demo-tests.ts';
import { type ModelPack, type ModelRun, modelRun } from './cell-model.ts';

/** A made-up log as a bench load might write it, with the preamble that says that it is made up. */
export function demoLogText(title: string, pack: ModelPack, run: ModelRun): string {
  const rows = modelRun(pack, run).map(({ timeS, voltageV, currentA }) =>
    [timeS.toFixed(0), voltageV.toFixed(3), (-currentA).toFixed(2)].join(','),
  );
  return [...demoLogWords.preamble(title), 'Time [s],Voltage [V],Current [A]', ...rows, ''].join('\n');
}
