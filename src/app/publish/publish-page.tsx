import { disclosureOf } from '../../sheet/model/disclosure.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { publishWords as say } from '../../text/publish.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { FilesPart } from './files-part.tsx';
import { ReportingPart } from './reporting-part.tsx';
import { usePublishedInput } from './use-published-input.ts';

const TO_SHOW = [
  { place: 'card', ...say.card },
  { place: 'sheet', ...say.sheet },
  { place: 'owner', ...say.owner },
  { place: 'letter', ...say.letter },
  { place: 'shoot-clock', ...say.chapters },
] as const;

/** All that can be taken away of a pack, under the disclosure that will stand on it. */
export function PublishPage({ session }: { session: PackSession }) {
  const published = usePublishedInput(session);
  const { packId, nameplate, demo, sheet } = session.record.value;
  return (
    <Screen
      title={say.title}
      back={backToPack(session.record.value)}
      end={demo && <span class="mark">{words.inventedDemo}</span>}
    >
      <p>{say.intro}</p>
      {sheet.now !== 'closed' && (
        <div class="notice stack">
          <p>{say.notClosed}</p>
          <a class="button" href={hrefTo(packId, 'sheet')}>
            {say.toSheet}
          </a>
        </div>
      )}
      {published === 'reading' ? (
        <p role="status">{closingWords.reading}</p>
      ) : (
        <>
          <DisclosurePart packId={packId} record={published.input.record} />
          <section class="stack">
            <h2>{say.toShow}</h2>
            <ul class="lines">
              {TO_SHOW.map(({ place, title, hint }) => (
                <li key={place}>
                  <a class="line" href={hrefTo(packId, place)}>
                    <span class="fact-mark" />
                    <span class="title">{title}</span>
                    <span class="side">{hint}</span>
                  </a>
                </li>
              ))}
            </ul>
          </section>
          <FilesPart
            input={published.input}
            revision={published.revision}
            title={words.packLabel(nameplate.name ?? '', nameplate.sample ?? '')}
          />
        </>
      )}
      <ReportingPart />
    </Screen>
  );
}

function DisclosurePart({ packId, record }: { packId: string; record: Parameters<typeof disclosureOf>[0] }) {
  const { obtained, paysCommission } = record.nameplate;
  const lacks = [
    ...(obtained === undefined ? [say.notStated] : []),
    ...(paysCommission === undefined ? [say.commissionNotStated] : []),
  ];
  return (
    <section class="stack">
      <h2>{say.disclosure}</h2>
      <p>{disclosureOf(record).line}</p>
      {lacks.length > 0 && (
        <div class="notice stack">
          <p>{lacks.join(' ')}</p>
          <a class="button" href={hrefTo(packId, 'nameplate')}>
            {say.toNameplate}
          </a>
        </div>
      )}
    </section>
  );
}
