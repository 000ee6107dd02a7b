import { leftBehindWords as say } from '../../text/closed.ts';
import { doneWithLeftBehind, leftBehind } from '../state/left-behind.ts';
import { OverEverything } from './records-closed.tsx';
import { TextToCopy } from './text-to-copy.tsx';

/** After a reload with something unsaved: shown until the person is done with it. */
export function LeftBehindDialog() {
  const text = leftBehind.value;
  if (text === null) return null;
  return (
    <OverEverything title={say.title}>
      <TextToCopy label={say.lead} text={text} />
      <button type="button" class="button primary" onClick={doneWithLeftBehind}>
        {say.done}
      </button>
    </OverEverything>
  );
}
