import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import './since.css';
import { sinceBlocks } from '../../sheet/model/since-blocks.ts';
import { sinceWords as say } from '../../text/since.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetBlock } from '../../ui/sheet/sheet-block.tsx';
import { backToPack } from '../back-to-pack.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';
import { useSince } from './use-since.ts';

/** What changed since the pack that this one was begun from: the same blocks as on its sheet. */
export function SincePage({ session }: { session: PackSession }) {
  const record = session.record.value;
  const since = useSince(session);
  const label = (since !== 'reading' && since?.label) || record.retestOf?.label || say.earlierUnnamed;
  const blocks = since === 'reading' ? [] : sinceBlocks(since, settings.value.units);
  return (
    <Screen
      title={say.title(label)}
      back={backToPack(record)}
      end={record.demo && <span class="mark">{words.inventedDemo}</span>}
      dock={
        <>
          {since !== 'reading' && since?.here && record.retestOf && (
            <a class="button" href={hrefTo(record.retestOf.packId)}>
              {say.toEarlier(label)}
            </a>
          )}
          <a class="button" href={hrefTo(record.packId, 'sheet')}>
            {say.toSheet}
          </a>
        </>
      }
    >
      {since === 'reading' ? (
        <p role="status">{say.opening}</p>
      ) : (
        <section class="stack since">
          {blocks.map((block, index) => (
            <SheetBlock key={index} block={block} photo={() => null} />
          ))}
          {since?.here && since.changes.apart === 'versions' && <p class="small muted">{say.scores.carryOver}</p>}
        </section>
      )}
    </Screen>
  );
}
