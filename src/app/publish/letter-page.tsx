import '../../ui/sheet/sheet.css';
import { makeLetterSheet } from '../../sheet/model/letter-sheet.ts';
import { letterText } from '../../sheet/model/letter-text.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { letterWords } from '../../text/letter.ts';
import { publishWords } from '../../text/publish.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetView } from '../../ui/sheet/sheet-view.tsx';
import { fileName } from '../file-name.ts';
import { HandOver } from '../parts/hand-over.tsx';
import { TextToCopy } from '../parts/text-to-copy.tsx';
import { hrefTo } from '../route.ts';
import { PdfActions } from '../sheet/pdf-actions.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { usePublishedInput } from './use-published-input.ts';

const say = letterWords.screen;

/** The letter as it will be on paper, as a PDF, and as plain text to copy, share or save. */
export function LetterPage({ session }: { session: PackSession }) {
  const published = usePublishedInput(session);
  const { packId, nameplate, demo } = session.record.value;
  const frame = {
    title: say.title,
    back: { href: hrefTo(packId, 'publish'), label: publishWords.title },
    end: demo && <span class="mark">{words.inventedDemo}</span>,
  };
  if (published === 'reading') {
    return (
      <Screen {...frame}>
        <p role="status">{closingWords.reading}</p>
      </Screen>
    );
  }
  const letter = makeLetterSheet(published.input);
  const text = letterText(letter);
  const name = fileName({ title: letter.title, revision: published.revision, what: null, ending: 'txt' });
  const makeFile = async () => new File([text], name, { type: 'text/plain' });
  return (
    <Screen {...frame} dockClass="two-rows" dock={<PdfActions sheet={letter} revision={published.revision} />}>
      <p>{say.intro}</p>
      {nameplate.maker === undefined && (
        <p class="notice calm">
          {say.noMaker} <a href={hrefTo(packId, 'nameplate')}>{say.toNameplate}</a>
        </p>
      )}
      <p class="small muted">
        {say.opinionHint} <a href={hrefTo(packId, 'afterwards')}>{say.toAfterwards}</a>
      </p>
      <SheetView sheet={letter} photo={() => null} />
      <section class="stack">
        <h2>{say.text}</h2>
        <TextToCopy label={say.textHint} text={text} />
        <HandOver label={say.textFile} make={makeFile} />
      </section>
    </Screen>
  );
}
