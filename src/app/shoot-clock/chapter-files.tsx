import type { RecordTake } from '../../record/pack-record.ts';
import { chaptersOf } from '../../sheet/chapters/chapters-of.ts';
import { chaptersPlain } from '../../sheet/chapters/chapters-plain.ts';
import { chaptersVtt } from '../../sheet/chapters/chapters-vtt.ts';
import { takeTitle } from '../../sheet/chapters/take-title.ts';
import { disclosureOf } from '../../sheet/model/disclosure.ts';
import { chapterWords, shootClockWords as say } from '../../text/shoot-clock.ts';
import { words } from '../../text/words.ts';
import { fileName } from '../file-name.ts';
import { HandOver } from '../parts/hand-over.tsx';
import type { PackSession } from '../state/pack-session.ts';

/** The chapters of one take as files, and what may surprise in them. */
export function ChapterFiles({ session, take }: { session: PackSession; take: RecordTake }) {
  const record = session.record.value;
  const titled = { definition: session.definition.definition, grading: session.grading.value };
  const made = chaptersOf(record, titled, take.id);
  if (made === null) return null;
  const { name = '', sample = '' } = record.nameplate;
  const pack = words.packLabel(name, sample);
  const title = chapterWords.head(pack, takeTitle(take, record.takes));
  const disclosure = disclosureOf(record);
  const vtt = chaptersVtt(made, { title, disclosure });
  const plain = chaptersPlain(made, disclosure);
  const what = chapterWords.fileEnd(record.takes.findIndex(({ id }) => id === take.id) + 1);
  // Of the film, not of a sheet: it bears no revision.
  const nameOf = (ending: string) => fileName({ title: pack, revision: null, what, ending });
  const { beforeStartCount, goneCount, shortCount } = made;
  return (
    <section class="stack">
      <h3>{say.files}</h3>
      {beforeStartCount > 0 && <p class="notice calm small">{say.beforeStart(beforeStartCount)}</p>}
      {goneCount > 0 && <p class="notice calm small">{say.goneLeftOut(goneCount)}</p>}
      {/* A file that lies ready to be shared goes with the times it was made from. */}
      <HandOver
        key={`vtt ${vtt}`}
        label={say.vtt}
        make={async () => new File([vtt], nameOf('vtt'), { type: 'text/vtt' })}
      />
      <HandOver
        key={`plain ${plain}`}
        label={say.plain}
        make={async () => new File([plain], nameOf('txt'), { type: 'text/plain' })}
      />
      {shortCount > 0 && <p class="small muted">{say.short(shortCount)}</p>}
    </section>
  );
}
