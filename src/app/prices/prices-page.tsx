import { useState } from 'preact/hooks';
import type { Named } from '../../schema/live-tests/live-tests.ts';
import type { Offer } from '../../schema/offer.ts';
import { formatDay } from '../../text/format-day.ts';
import { formatPrice } from '../../text/format-unit.ts';
import { pricesWords as say } from '../../text/prices.ts';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { SavedLine } from '../parts/saved-line.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { OfferDialog } from './offer-dialog.tsx';

type Asking = { kind: Offer['kind']; offer: Named<Offer> | null };

/** What the pack costs on other days, and what its variants add. Nothing here touches the sheet. */
export function PricesPage({ session }: { session: PackSession }) {
  const [asking, setAsking] = useState<Asking | null>(null);
  const record = session.record.value;
  const { nameplate, offers } = record;
  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={() => setAsking({ kind: 'option', offer: null })}>
            {say.addOption}
          </button>
          <button type="button" class="button primary" onClick={() => setAsking({ kind: 'price', offer: null })}>
            {say.addPrice}
          </button>
        </>
      }
    >
      <p class="muted">{say.lead}</p>
      <section class="stack">
        <h2>{say.paid}</h2>
        {nameplate.price === undefined ? (
          <>
            <p>{say.paidNone}</p>
            <a class="button" href={hrefTo(record.packId, 'nameplate')}>
              {say.toNameplate}
            </a>
          </>
        ) : (
          <p>
            {formatPrice(nameplate.price, nameplate.currency)}
            <span class="muted"> · {dayOf(nameplate.pricedOn)}</span>
          </p>
        )}
      </section>
      {(['price', 'option'] as const).map((kind) => (
        <section key={kind} class="stack">
          <h2>{kind === 'price' ? say.later : say.options}</h2>
          <Offers
            session={session}
            offers={offers.filter((offer) => offer.kind === kind)}
            none={kind === 'price' ? say.laterNone : say.optionsNone}
            onChange={(offer) => setAsking({ kind, offer })}
          />
          {kind === 'option' && <p class="small muted">{say.untested}</p>}
        </section>
      ))}
      <a class="button" href="#/side-by-side">
        {say.toSideBySide}
      </a>
      {asking && <OfferDialog session={session} {...asking} onClose={() => setAsking(null)} />}
    </Screen>
  );
}

interface OffersProps {
  session: PackSession;
  offers: readonly Named<Offer>[];
  none: string;
  onChange: (offer: Named<Offer>) => void;
}

function Offers({ session, offers, none, onChange }: OffersProps) {
  if (offers.length === 0) return <p class="muted">{none}</p>;
  return (
    <>
      {offers.map((offer) => (
        <div key={offer.id} class="card stack">
          <p>
            {offer.label ?? say.asTested}
            {': '}
            {offer.kind === 'option'
              ? say.adds(formatPrice(offer.price, offer.currency))
              : formatPrice(offer.price, offer.currency)}
          </p>
          <p class="small muted">{[dayOf(offer.pricedOn), offer.seller].filter(Boolean).join(' · ')}</p>
          <div class="row">
            <button
              type="button"
              class="button quiet"
              onClick={() =>
                void session.put({
                  puts: [{ subject: 'offer', part: offer.id, gone: true }],
                  undoLabel: say.undoLabel(say.kinds[offer.kind], offer.label ?? ''),
                })
              }
            >
              {say.takeOut}
            </button>
            <button type="button" class="button" onClick={() => onChange(offer)}>
              {say.change}
            </button>
          </div>
        </div>
      ))}
    </>
  );
}

function dayOf(day: string | undefined): string {
  return day === undefined ? say.dayNotSaid : say.onDay(formatDay(day));
}
