import type { RemedyNote } from '../../../schema/remedy-note.ts';
import type { Put } from '../../../storage/store.ts';
import { demoRemedyWords as say } from '../../../text/demo-remedies.ts';
import { WREN } from '../wren.ts';
import type { BesideFacts } from './beside.ts';

/** What some of the remedies would cost the hut: invented prices, some left unknown. */
export function remedyEntries({ pack, dayBefore }: BesideFacts): Put[] {
  const isWren = pack.packId === WREN.packId;
  const notes: Readonly<Record<string, RemedyNote>> = isWren
    ? {
        'terminal-fuse': { price: 62.5, parts: say.wren.fuse },
        'charge-thermostat': { price: 28 },
        'clear-vents': { price: 90, note: say.wren.vents },
        'move-sensor': { price: 35, timeMin: 40 },
        'bush-main-leads': { price: 45 },
        'bush-sense-leads': { price: 45 },
      }
    : {
        'terminal-fuse': { price: 62.5 },
        'terminal-covers': { price: 6.9, timeMin: 10 },
        'keep-dry': { price: 0, note: say.dipper.dry },
        'add-sensors': { price: 55 },
      };
  return Object.entries(notes).map(([part, note]) => ({
    subject: 'remedyNote',
    part,
    v: { ...note, currency: 'EUR', pricedOn: dayBefore(4) },
  }));
}
