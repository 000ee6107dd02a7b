import { remedyPrice } from '../../grading/remedy-costs.ts';
import { formatDay } from '../../text/format-day.ts';
import { formatPrice } from '../../text/format-unit.ts';
import { remedyWords as say, workTime } from '../../text/remedies.ts';
import type { RemedyBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** Parts, time and cost of one remedy as far as known: what the tester wrote, else what the checklist says. */
export function takesOf(
  { definition, record }: Pick<SheetContext, 'definition' | 'record'>,
  remedyId: string,
): Pick<RemedyBlock, 'takes' | 'note'> {
  const remedy = definition.remedies.find(({ id }) => id === remedyId);
  const note = record.remedyNotes[remedyId];
  const parts = note?.parts ?? remedy?.parts;
  const timeMin = note?.timeMin === undefined ? remedy?.timeMin : { from: note.timeMin, to: note.timeMin };
  const { currency = record.nameplate.currency, price, pricedOn } = note ?? {};
  const shown = price === undefined ? null : formatPrice(price, currency);
  return {
    takes: [
      ...(parts === undefined ? [] : [say.parts(parts)]),
      ...(timeMin === undefined ? [] : [say.time(workTime(timeMin))]),
      ...(shown === null ? [] : [pricedOn === undefined ? say.price(shown) : say.priceOn(shown, formatDay(pricedOn))]),
      ...(shown !== null && remedyPrice(record, remedyId) === null ? [say.otherCurrency] : []),
    ],
    note: note?.note === undefined || note.note === '' ? null : { label: say.note, text: note.note },
  };
}
