import { useState } from 'preact/hooks';
import type { Named } from '../../schema/live-tests/live-tests.ts';
import { type Offer, offerSchema } from '../../schema/offer.ts';
import { randomId } from '../../storage/open-store.ts';
import { fieldWords } from '../../text/fields.ts';
import { localDay } from '../../text/format-day.ts';
import { pricesWords as say } from '../../text/prices.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { DayField } from '../../ui/fields/day-field.tsx';
import { Field } from '../../ui/fields/field.tsx';
import { readNumber } from '../../ui/fields/read-number.ts';
import { TextField } from '../../ui/fields/text-field.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { limitProblem } from '../parts/limit-problem.ts';
import { notNegative } from '../parts/shown-number.ts';
import type { PackSession } from '../state/pack-session.ts';
import { isProvisional } from '../state/provisional.ts';

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
  const [typed, setTyped] = useState(offer ? String(offer.price) : '');
  const [currency, setCurrency] = useState(offer ? (offer.currency ?? '') : (nameplate.currency ?? ''));
  const [pricedOn, setPricedOn] = useState(
    offer ? (offer.pricedOn ?? '') : localDay(nowMs.peek(), utcOffsetMinutes(nowMs.peek())),
  );
  const [seller, setSeller] = useState(offer?.seller ?? '');
  const asked = say.dialog[kind];
  const price = readNumber(typed);
  const wrong = wrongPrice(price, typed, currency);
  const isCurrency = currency === '' || /^[A-Z]{3}$/.test(currency);
  const complete = typeof price === 'number' && wrong === null && isCurrency && (kind === 'price' || label !== '');

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
      // A stamp that stands in for one being drawn is never written.
      made: offer === null || isProvisional(offer.made) ? null : offer.made,
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
        placeholder={kind === 'price' ? say.asTested : say.heater}
      />
      <div class="pair">
        <Field id="offer-price" label={asked.amount} wrong={wrong}>
          <input
            id="offer-price"
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={typed}
            aria-invalid={wrong !== null}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
          <span class="unit">{currency}</span>
        </Field>
        <Field id="offer-currency" label={say.currency} wrong={isCurrency ? null : say.currencyWrong}>
          <input
            id="offer-currency"
            type="text"
            autocomplete="off"
            maxLength={3}
            value={currency}
            aria-invalid={!isCurrency}
            onInput={(event) => setCurrency(event.currentTarget.value.toUpperCase())}
          />
        </Field>
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

/** What is wrong with a price as typed; nothing is while the box is empty. */
function wrongPrice(price: ReturnType<typeof readNumber>, typed: string, currency: string): string | null {
  if (price === 'empty') return null;
  if (price === null) return fieldWords.notANumber(typed.trim());
  return notNegative(price) ?? limitProblem(offerSchema.entries.price, price, { unit: currency });
}

function withoutUndefined(value: object): object {
  return Object.fromEntries(Object.entries(value).filter(([, one]) => one !== undefined));
}
