import type { Finding } from '../../../grading/grading.ts';
import { bestPhoto, type ChosenFinding } from '../../../sheet/card/card-model.ts';
import type { SheetContext } from '../../../sheet/model/sheet-context.ts';
import { cardWords as say } from '../../../text/card.ts';
import { ChoiceField } from '../../../ui/fields/choice-field.tsx';
import { Lid } from '../../../ui/lid.tsx';

interface FindingChoiceProps {
  context: SheetContext;
  finding: Finding;
  chosen: ChosenFinding | null;
  /** Three stand already. */
  full: boolean;
  onChange: (chosen: ChosenFinding | null) => void;
}

/** Whether a finding stands on the card, and with which photo and words. */
export function FindingChoice({ context, finding, chosen, full, onChange }: FindingChoiceProps) {
  const { itemId } = finding;
  const { title } = context.itemOf(itemId);
  const photos = context.photosOf(itemId);
  const note = context.record.answers[itemId]?.note?.trim();
  const begun: ChosenFinding = { itemId, photoId: bestPhoto(photos, itemId)?.photoId ?? null, words: 'sentence' };
  return (
    <li class="card-finding">
      <label class="pick">
        <input
          type="checkbox"
          checked={chosen !== null}
          disabled={full && chosen === null}
          onChange={(event) => onChange(event.currentTarget.checked ? begun : null)}
        />
        <Lid outcome={finding.grade} />
        <span>{title}</span>
      </label>
      {chosen !== null && photos.length > 0 && (
        <ChoiceField
          label={say.photoOf(title)}
          choices={[
            ...photos.map(({ photoId, number }) => ({ id: photoId, text: say.photo(number) })),
            { id: '', text: say.noPhoto },
          ]}
          chosen={chosen.photoId ?? ''}
          onChoose={(id) => onChange({ ...chosen, photoId: id === '' ? null : id })}
        />
      )}
      {chosen !== null && note && (
        <ChoiceField
          label={say.wordsOf(title)}
          choices={[
            { id: 'sentence', text: say.sentence },
            { id: 'note', text: say.note },
          ]}
          chosen={chosen.words}
          onChoose={(words) => onChange({ ...chosen, words })}
        />
      )}
    </li>
  );
}
