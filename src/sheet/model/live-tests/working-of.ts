import { CALCULATION_SOURCES, type CalculationSource } from '../../../text/live-tests/results/sources.ts';
import { testWords as say } from '../../../text/live-tests/results/test.ts';
import type { Working } from '../sheet.ts';

interface WorkingParts {
  formulas: readonly string[];
  inputs: Working['inputs'];
  sources: readonly CalculationSource[];
  uncertainty?: string | null;
}

/** How a figure was worked out; null where nothing was. */
export function workingOf({ formulas, inputs, sources, uncertainty }: WorkingParts): Working | null {
  if (formulas.length === 0) return null;
  return {
    formula: say.formulas(formulas),
    inputs,
    ...(uncertainty === null || uncertainty === undefined ? {} : { uncertainty }),
    sources: [...new Set(sources)].map((source) => CALCULATION_SOURCES[source]),
  };
}
