import { rule } from '../drawing/rule.ts';
import { drawingWords } from '../text/drawings.ts';
import { formatScore } from '../text/format-number.ts';
import { DrawingView } from './drawing-view.tsx';

interface RuleViewProps {
  score: { low: number; high: number } | null;
  settled: boolean;
  widthPx?: number;
}

/** The score on its straight rule, stretched to the width it stands in. */
export function RuleView({ score, settled, widthPx = 330 }: RuleViewProps) {
  const figures = score === null ? '' : formatScore(score, settled);
  return (
    <div class="rule">
      <DrawingView drawing={rule({ range: score, settled, figures, widthPx, alt: drawingWords.rule(figures) })} />
    </div>
  );
}
