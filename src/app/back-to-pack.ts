import type { PackRecord } from '../record/pack-record.ts';
import { words } from '../text/words.ts';
import { hrefTo } from './route.ts';

/** The way back from a place of a pack to the pack's own screen. */
export function backToPack({ packId, nameplate }: Pick<PackRecord, 'packId' | 'nameplate'>): {
  href: string;
  label: string;
} {
  return { href: hrefTo(packId), label: words.packName(nameplate.name) };
}
