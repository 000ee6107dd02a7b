import { figure, figureIn, sharePercent } from '../../../text/live-tests/results/figures.ts';
import { runWords } from '../../../text/live-tests/results/run.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';

const say = runWords.evidence;

/** The numbers on which the end rests, as far as they are kept; null where there are none. */
export function evidenceWords(evidence: Readonly<Record<string, unknown>> | undefined): string | null {
  if (evidence === undefined) return null;
  const said = (name: string, words: (value: number) => string): string[] => {
    const value = evidence[name];
    return typeof value === 'number' && Number.isFinite(value) ? [words(value)] : [];
  };
  const parts = [
    ...said('middleVoltageV', (volts) => say.middle(figureIn(volts, 'V'))),
    ...said('lastVoltageV', (volts) => say.last(figureIn(volts, 'V'))),
    ...said('dropFrac', (frac) => say.drop(sharePercent(frac))),
    ...said('voltagePerCellV', (volts) => say.perCell(figureIn(volts, 'V'))),
    ...said('slopeRatio', (ratio) => say.slope(figure(Number(ratio.toPrecision(2))))),
    ...said('lowestAfterV', (volts) => say.after(figureIn(volts, 'V'))),
  ];
  return parts.length === 0 ? null : testWords.listed(parts);
}
