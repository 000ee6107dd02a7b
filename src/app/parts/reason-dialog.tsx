import { useState } from 'preact/hooks';
import { itemWords } from '../../text/item.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';

interface ReasonDialogProps {
  title: string;
  reasons: readonly string[];
  onReason: (reason: string) => void;
  /** Takes the present answer back. */
  onClear?: () => void;
  onClose: () => void;
}

/** Why an item is not graded: one of the usual reasons, or one typed. */
export function ReasonDialog({ title, reasons, onReason, onClear, onClose }: ReasonDialogProps) {
  const [own, setOwn] = useState('');
  return (
    <Dialog title={title} onClose={onClose}>
      {reasons.map((reason) => (
        <button key={reason} type="button" class="button" onClick={() => onReason(reason)}>
          {reason}
        </button>
      ))}
      <TextField id="own-reason" label={itemWords.ownReason} value={own} onChange={setOwn} />
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {words.cancel}
        </button>
        {onClear && (
          <button type="button" class="button quiet" onClick={onClear}>
            {itemWords.clear}
          </button>
        )}
        <button type="button" class="button primary" disabled={own === ''} onClick={() => onReason(own)}>
          {itemWords.keepReason}
        </button>
      </div>
    </Dialog>
  );
}
