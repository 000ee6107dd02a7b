import { formatValue } from '../../../text/format-unit.ts';
import { cellGridWords as say } from '../../../text/live-tests/cells.ts';
import type { CellBoxPlace } from './cell-drafts.ts';
import type { CellFigure } from './read-cell-figure.ts';
import type { CellOffer } from './use-cell-boxes.ts';

interface CellTroubleProps extends CellBoxPlace {
  trouble: Extract<CellFigure, { kind: 'offer' | 'wrong' }> & { typed: string };
  onTake: (offer: CellOffer) => void;
}

/** What stands in a box and was not stored: why, and the figure it was most likely meant as. */
export function CellTrouble({ number, column, trouble, onTake }: CellTroubleProps) {
  const { typed } = trouble;
  if (trouble.kind === 'wrong') {
    return (
      <p class="wrong small" role="alert">
        {say.wrong[trouble.because](number, typed)}
      </p>
    );
  }
  return (
    <div class="wrong small cell-offer" role="alert">
      <span>{say.offered(number, typed)}</span>
      <button type="button" class="button" onClick={() => onTake({ number, column, typed, value: trouble.value })}>
        {formatValue(trouble.value, 'V')}
      </button>
    </div>
  );
}
