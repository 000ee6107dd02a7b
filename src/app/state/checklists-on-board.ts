import { sha256Hex } from '../../photos/sha256-hex.ts';
import { BUILT_IN_FILES, builtInText } from './built-in-checklists.ts';
import { parsedOrNull } from './definitions.ts';
import { isNewerVersion } from './is-newer-version.ts';
import { store } from './store.ts';

/** `came`: with a pack of a bundle, or a pack was once begun with it. */
export type Origin = 'builtIn' | 'loaded' | 'came';

/** A checklist on this phone as a list shows it: read off its text without the whole check. */
export interface ChecklistOnBoard {
  sha256: string;
  text: string;
  origin: Origin;
  id: string;
  version: string;
  title: string;
  fits: string;
  isDraft: boolean;
  itemCount: number;
}

const loadedName = (sha256: string) => `loadedChecklist/${sha256}`;

/** Marks a kept checklist as loaded by hand, one key each, so that two tabs never write over one another's. */
export function markLoaded(sha256: string, isLoaded: boolean): Promise<void> {
  return store().keep(loadedName(sha256), isLoaded);
}

export async function wasLoaded(sha256: string): Promise<boolean> {
  return (await store().kept<boolean>(loadedName(sha256))) === true;
}

/** All of them: built in first, the usual one on top, then loaded, then those that came with packs; newest first of each id. */
export async function checklistsOnBoard(): Promise<ChecklistOnBoard[]> {
  const builtIn = await Promise.all(BUILT_IN_FILES.map(async (file) => glanceAt(await builtInText(file), 'builtIn')));
  const hashes = new Set(builtIn.map(({ sha256 }) => sha256));
  const others = (await store().definitions()).filter(({ sha256 }) => !hashes.has(sha256));
  const kept = await Promise.all(
    others.map(async ({ sha256, text }) => glanceAt(text, (await wasLoaded(sha256)) ? 'loaded' : 'came')),
  );
  const sorted = kept.toSorted((a, b) => {
    if (a.id !== b.id) return a.id < b.id ? -1 : 1;
    return isNewerVersion(a.version, b.version) ? -1 : 1;
  });
  return [...builtIn, ...sorted.filter(isOf('loaded')), ...sorted.filter(isOf('came'))];
}

/** What a new pack can begin with: of each id the newest that comes with the app and the newest loaded by hand. */
export function offeredOf(onBoard: readonly ChecklistOnBoard[]): ChecklistOnBoard[] {
  return onBoard.filter(
    (one) => one.origin !== 'came' && onBoard.find(({ id, origin }) => id === one.id && origin === one.origin) === one,
  );
}

function isOf(origin: Origin): (one: ChecklistOnBoard) => boolean {
  return (one) => one.origin === origin;
}

async function glanceAt(text: string, origin: Origin): Promise<ChecklistOnBoard> {
  const sha256 = await sha256Hex(new TextEncoder().encode(text));
  const parsed = parsedOrNull(text);
  const fields =
    typeof parsed === 'object' && parsed !== null ? new Map<string, unknown>(Object.entries(parsed)) : null;
  const words = (name: string) => {
    const value = fields?.get(name);
    return typeof value === 'string' ? value : '';
  };
  const items = fields?.get('items');
  return {
    sha256,
    text,
    origin,
    id: words('id'),
    version: words('version'),
    title: words('title'),
    fits: words('fits'),
    isDraft: words('status') !== 'released',
    itemCount: Array.isArray(items) ? items.length : 0,
  };
}
