import { useState } from 'preact/hooks';
import type { Named } from '../../schema/live-tests/live-tests.ts';
import { type Offer, offerSchema } from '../../schema/offer.ts';
import { randomId } from '../../storage/open-store.ts';
import { localDay } from '../../text/format-day.ts';
import { pricesWords as say } from '../../text/prices.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { DayField } from '../../ui/fields/day-field.tsx';
import { NumberField } from '../../ui/fields/number-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { limitProblem } from '../parts/limit-problem.ts';
import { notNegative } from '../parts/shown-number.ts';
import type { PackSession } from '../state/pack-session.ts';

interface OfferDialogProps {
  session: PackSession;
  kind: Offer['kind'];
  /** The one that is changed; null of a new one. */
  offer: Named<Offer> | null;
  onClose: () => void;
}

/** A price or an option, typed whole and saved at once. */
export function OfferDialog({ session, kind, offer, onClose }: OfferDialogProps) {
  const { nameplate } = session.record.value;
  const [label, setLabel] = useState(offer?.label ?? '');
  const [price, setPrice] = useState<number | null>(offer?.price ?? null);
  const [currency, setCurrency] = useState(offer ? (offer.currency ?? '') : (nameplate.currency ?? ''));
  const [pricedOn, setPricedOn] = useState(
    offer ? (offer.pricedOn ?? '') : localDay(nowMs.peek(), utcOffsetMinutes(nowMs.peek())),
  );
  const [seller, setSeller] = useState(offer?.seller ?? '');
  const asked = say.dialog[kind];
  const complete = price !== null && (kind === 'price' || label !== '');

  function save() {
    const v = {
      ...offer,
      id: undefined,
      kind,
      label: label === '' ? undefined : label,
      price,
      currency: currency === '' ? undefined : currency,
      pricedOn: pricedOn === '' ? undefined : pricedOn,
      seller: seller === '' ? undefined : seller,
      made: offer?.made ?? null,
    };
    void session.put({
      puts: [{ subject: 'offer', part: offer?.id ?? randomId(), v: withoutUndefined(v) }],
      undoLabel: say.undoLabel(say.kinds[kind], label),
    });
    onClose();
  }

  return (
    <Dialog title={asked.fresh} onClose={onClose}>
      <TextField
        id="offer-label"
        label={asked.label}
        value={label}
        onChange={setLabel}
        {...(kind === 'price' && { placeholder: say.asTested })}
      />
      <div class="pair">
        <NumberField
          id="offer-price"
          owner={`${session.packId}/${offer?.id ?? kind}`}
          label={asked.amount}
          unit={currency}
          value={price}
          onChange={setPrice}
          check={(value) => notNegative(value) ?? limitProblem(offerSchema.entries.price, value, { unit: currency })}
        />
        <TextField
          id="offer-currency"
          label={say.currency}
          value={currency}
          onChange={(text) => setCurrency(text.toUpperCase())}
          check={(text) => (text === '' || /^[A-Za-z]{3}$/.test(text) ? null : say.currencyWrong)}
          owner={`${session.packId}/${offer?.id ?? kind}`}
          maxLength={3}
        />
        <DayField id="offer-on" label={say.pricedOn} value={pricedOn} onChange={setPricedOn} />
        <TextField id="offer-seller" label={say.seller} value={seller} onChange={setSeller} />
      </div>
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" disabled={!complete} onClick={save}>
          {say.save}
        </button>
      </div>
    </Dialog>
  );
}

function withoutUndefined(value: object): object {
  return Object.fromEntries(Object.entries(value).filter(([, one]) => one !== undefined));
}
