import type { PartPlan } from '../../storage/bundle/plan-bundle.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { keepWords as say } from '../../text/keep.ts';

interface MadePartProps {
  part: PartPlan;
  blob: Blob;
  handedOver: boolean;
  onSave(): void;
  onNext(): void;
}

/** A part that lies ready: it is handed over by a tap, and the next is made only after that. */
export function MadePart({ part: { part, parts, fileName }, blob, handedOver, onSave, onNext }: MadePartProps) {
  return (
    <>
      <p role="status">{say.partReady(part, parts, formatBytes(blob.size))}</p>
      <button type="button" class={handedOver ? 'button' : 'button primary'} onClick={onSave}>
        {say.savePart(fileName)}
      </button>
      {handedOver && (
        <button type="button" class="button primary" onClick={onNext}>
          {say.nextPart}
        </button>
      )}
    </>
  );
}
