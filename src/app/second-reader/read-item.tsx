import type { ShownItem } from '../../grading/shown-items.ts';
import type { RecordSecondReader } from '../../record/pack-record.ts';
import type { Item } from '../../schema/checklist.ts';
import { GRADES } from '../../schema/grade.ts';
import type { SecondAnswer } from '../../schema/second-reading.ts';
import { itemWords } from '../../text/item.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { AnswerButton } from '../../ui/answer-button.tsx';
import { Screen } from '../../ui/screen.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { BlindPhotos } from './blind-photos.tsx';
import { OwnSavedLine } from './own-saved-line.tsx';

interface ReadItemProps {
  session: PackSession;
  reader: RecordSecondReader;
  number: number;
  item: Item;
  shown: readonly ShownItem[];
}

/** One item for the second reader: its photos and its sentences, and nothing of what the first one found. */
export function ReadItem({ session, reader, number, item, shown }: ReadItemProps) {
  const record = session.record.value;
  const answer = reader.answers[item.id];
  const place = shown.findIndex(({ itemId }) => itemId === item.id);
  const photoIds = shown[place]?.photoIds ?? [];
  const photos = record.photos.filter(({ id }) => photoIds.includes(id));
  const next = shown[place + 1];
  const hrefOf = (id: string) => hrefTo(record.packId, 'second-reader', id);

  /** The same again takes it back. */
  function give(next: SecondAnswer) {
    const base = { subject: 'secondAnswer', part: `${reader.id}/${item.id}` };
    const same = answer?.kind === next.kind && (next.kind !== 'grade' || isGrade(answer, next.grade));
    void session.put({
      puts: [same ? { ...base, gone: true } : { ...base, v: next }],
      undoLabel: say.undo.answer(number, item.title),
    });
  }
  return (
    <Screen
      title={item.ask}
      titleClass="question"
      back={{ href: hrefTo(record.packId, 'second-reader'), label: say.leave }}
      end={<span class="saved">{itemWords.position(place + 1, shown.length)}</span>}
      dockClass="two-rows"
      dock={
        <>
          <OwnSavedLine session={session} />
          <button
            type="button"
            class={answer === undefined ? 'button' : 'button primary'}
            onClick={() => goTo(hrefOf(next ? `${reader.id}/${next.itemId}` : reader.id))}
          >
            {say.next}
          </button>
        </>
      }
    >
      <p class="muted">{item.look}</p>
      <BlindPhotos photos={photos} />
      <p class="push small muted">{itemWords.worstCounts}</p>
      <div class="answers" role="radiogroup" aria-label={item.ask}>
        {GRADES.flatMap((grade) => {
          const sentence = item.grades[grade];
          return sentence === undefined
            ? []
            : [
                <AnswerButton
                  key={grade}
                  {...{ grade, sentence }}
                  chosen={isGrade(answer, grade)}
                  onChoose={() => give({ kind: 'grade', grade })}
                />,
              ];
        })}
      </div>
      <div class="row">
        {(['cannotTell', 'doesNotApply'] as const).map((kind) => (
          <button
            key={kind}
            type="button"
            class="choice"
            aria-pressed={answer?.kind === kind}
            onClick={() => give({ kind })}
          >
            {say[kind]}
          </button>
        ))}
      </div>
    </Screen>
  );
}

function isGrade(answer: SecondAnswer | undefined, grade: string): boolean {
  return answer?.kind === 'grade' && answer.grade === grade;
}
