import type { Basis, Item } from '../../schema/checklist.ts';
import { itemWords } from '../../text/item.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';

/** Why an item is asked, and on what its grades rest. */
export function WhyDialog({ item, onClear, onClose }: { item: Item; onClear?: () => void; onClose: () => void }) {
  return (
    <Dialog title={itemWords.whyItMatters} onClose={onClose}>
      <p>{item.why}</p>
      {item.lastChance && <p>{itemWords.lostIfLeft(item.lastChance.lost)}</p>}
      <h3>{itemWords.basis}</h3>
      <ul class="stack small">
        {item.basis.map((basis, index) => (
          <li key={index}>{basisWords(basis)}</li>
        ))}
      </ul>
      <div class="row">
        {onClear && (
          <button type="button" class="button quiet" onClick={onClear}>
            {itemWords.clear}
          </button>
        )}
        <button type="button" class="button primary" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </Dialog>
  );
}

function basisWords(basis: Basis): string {
  if (basis.kind === 'commonPractice') return itemWords.basisWords.commonPractice;
  if (basis.kind === 'ourChoice') return itemWords.basisWords.ourChoice(basis.because);
  const source = basis.bears ? itemWords.basisWords.bears(basis.source, basis.bears) : basis.source;
  if (basis.sure === 'primary') return source;
  return basis.sure === 'memory' ? itemWords.basisWords.memory(source) : itemWords.basisWords.secondary(source);
}
