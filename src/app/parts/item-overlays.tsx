import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import { itemWords } from '../../text/item.ts';
import { measuredWords } from '../../text/measured.ts';
import { stopWords } from '../../text/stop.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { NoteDialog } from './note-dialog.tsx';
import { ReasonDialog } from './reason-dialog.tsx';
import { StopSteps } from './stop-steps.tsx';
import { WhyDialog } from './why-dialog.tsx';

/** What lies over the item, one at a time. */
export type ItemOver = 'none' | 'overrule' | 'notSeen' | 'doesNotApply' | 'why' | 'note' | 'photo' | 'stop';

interface ItemOverlaysProps {
  session: PackSession;
  item: Item;
  answer: Answer | undefined;
  over: ItemOver;
  stops: readonly Item[];
  onClose: () => void;
  onReason: (kind: 'overrule' | 'notSeen' | 'doesNotApply', reason: string) => void;
  onNote: (note: string) => void;
  onClear: () => void;
}

/** The dialogs of the item screen. */
export function ItemOverlays(props: ItemOverlaysProps) {
  const { session, item, answer, over, stops, onClose, onReason, onNote, onClear } = props;
  const clearing = answer && { onClear };
  switch (over) {
    case 'overrule':
      return (
        <ReasonDialog
          title={measuredWords.overruleTitle}
          reasons={measuredWords.overruleReasons}
          onClose={onClose}
          onReason={(reason) => onReason('overrule', reason)}
        />
      );
    case 'notSeen':
      return (
        <ReasonDialog
          title={itemWords.notSeenTitle}
          reasons={itemWords.notSeenReasons}
          {...clearing}
          onClose={onClose}
          onReason={(reason) => onReason('notSeen', reason)}
        />
      );
    case 'doesNotApply':
      return (
        <ReasonDialog
          title={itemWords.doesNotApplyTitle}
          reasons={item.mayNotApply}
          {...clearing}
          onClose={onClose}
          onReason={(reason) => onReason('doesNotApply', reason)}
        />
      );
    case 'why':
      return <WhyDialog item={item} {...clearing} onClose={onClose} />;
    case 'note':
      return <NoteDialog note={answer?.note ?? ''} onKeep={onNote} onClose={onClose} />;
    case 'photo':
      return (
        <PhotoTray
          session={session}
          zone={item.zone}
          itemId={item.id}
          what={item.title}
          onClose={onClose}
          onAdded={(ids) => {
            onClose();
            const only = ids.length === 1 ? ids[0] : undefined;
            if (only !== undefined) goTo(hrefTo(session.packId, 'photo', `${only}/${item.id}`));
          }}
        />
      );
    case 'stop':
      return (
        <Dialog title={stopWords.title} whole onClose={onClose}>
          <StopSteps packId={session.packId} items={stops} onCorrect={onClose} />
        </Dialog>
      );
    case 'none':
      return null;
  }
}
