import { useEffect } from 'preact/hooks';
import { finishedReadings, isFinished } from '../../grading/finished-readings.ts';
import { shownItems } from '../../grading/shown-items.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { Screen } from '../../ui/screen.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { AgreementPage } from './agreement-page.tsx';
import { FinishPage } from './finish-page.tsx';
import { ReadItem } from './read-item.tsx';
import { ReadingsPage } from './readings-page.tsx';

/**
 * Somebody else grades the pack blind, from its photos. `id`: nothing for the readings, a reader's id for their next item
 * (or how they agree, once finished), and after a slash an item's id.
 */
export function SecondReaderPage({ session, id }: { session: PackSession; id: string }) {
  const [readerId = '', itemId = ''] = id.split('/');
  const record = session.record.value;
  const { definition } = session.definition;
  const graded = { definition, record, grading: session.grading.value };
  if (readerId === '') return <ReadingsPage session={session} />;

  const number = record.secondReaders.findIndex((reader) => reader.id === readerId) + 1;
  const reader = record.secondReaders[number - 1];
  if (reader === undefined) return <Lost packId={record.packId} />;
  if (isFinished(reader)) {
    const reading = finishedReadings(graded).find((one) => one.reader.id === readerId);
    return reading ? <AgreementPage session={session} reading={reading} /> : <Lost packId={record.packId} />;
  }
  const shown = shownItems(definition, record, graded.grading);
  const open = shown.filter((one) => reader.answers[one.itemId] === undefined);
  const [first] = open;
  if (itemId === '' && first)
    return <ToItem href={hrefTo(record.packId, 'second-reader', `${readerId}/${first.itemId}`)} />;
  const now = shown.find((one) => one.itemId === itemId);
  const item = definition.items.find((one) => one.id === now?.itemId);
  if (now && item) return <ReadItem key={item.id} {...{ session, reader, number, item, shown }} />;
  return itemId === '' ? <FinishPage {...{ session, reader, number }} /> : <Lost packId={record.packId} />;
}

/** The next item has an address of its own, so that it stays on the screen once it is answered. */
function ToItem({ href }: { href: string }) {
  useEffect(() => goTo(href, { replace: true }), [href]);
  return null;
}

function Lost({ packId }: { packId: string }) {
  return (
    <Screen title={say.title} back={{ href: hrefTo(packId, 'second-reader'), label: say.leave }}>
      <p>{say.lost}</p>
    </Screen>
  );
}
