import type { RunResult } from '../../../grading/live-tests/results.ts';
import { figureIn } from '../../../text/live-tests/results/figures.ts';
import { runWords as say } from '../../../text/live-tests/results/run.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import { testName } from './test-rows.ts';

/** "Run 2", and the label its tester gave it. */
export function runName(runs: readonly RunResult[], id: string): string {
  const found = runs.find(({ run }) => run.id === id);
  const name = testName(
    say.one,
    runs.map(({ run }) => run),
    id,
  );
  const label = found?.run.label?.trim();
  return label ? testWords.titled([name, label]) : name;
}

/** Why it does not show the capacity, each reason in words; empty where it does. */
export function notCountedBecause({ run, completeness }: RunResult): string[] {
  if (completeness.complete) return [];
  return completeness.because.map((reason) => {
    if (reason !== 'notEndedLow') return say.incomplete[reason];
    return run.end === undefined || run.end === 'lowVoltage' || run.end === 'unclear'
      ? say.incomplete.notEndedLow
      : say.notEndedLow[run.end];
  });
}

/** "Run 1: 60 A, 292.2 Ah" as an input of what several runs come to. */
export function runInputs(runs: readonly RunResult[], ids: readonly string[]): { label: string; value: string }[] {
  return ids.flatMap((id) => {
    const found = runs.find(({ run }) => run.id === id);
    if (found === undefined) return [];
    const parts = [
      ...(found.currentA === null ? [] : [figureIn(found.currentA, 'A')]),
      ...(found.run.chargeAh === undefined ? [] : [figureIn(found.run.chargeAh, 'Ah')]),
      ...(found.energyWh === null ? [] : [figureIn(found.energyWh, 'Wh')]),
    ];
    return [{ label: runName(runs, id), value: testWords.listed(parts) }];
  });
}
