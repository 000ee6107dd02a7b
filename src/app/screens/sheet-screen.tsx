import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sheetScreenWords as say } from '../../text/sheet-screen.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

type SheetPage = ComponentType<{ session: PackSession }>;

/** The sheet, its model and its styles are fetched when it is first looked at. */
export function SheetScreen({ session }: { session: PackSession }) {
  const [page, setPage] = useState<{ Page: SheetPage } | null>(null);
  useEffect(() => {
    let left = false;
    void import('../sheet/sheet-page.tsx').then(({ SheetPage }) => {
      if (!left) setPage({ Page: SheetPage });
    });
    return () => {
      left = true;
    };
  }, []);
  if (page) return <page.Page session={session} />;
  const { name = '', sample = '' } = session.record.value.nameplate;
  return (
    <Screen title={say.title} back={{ href: hrefTo(session.packId), label: words.packLabel(name, sample) }}>
      <p class="muted">{say.opening}</p>
    </Screen>
  );
}
