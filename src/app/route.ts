import { signal } from '@preact/signals';

/** Places within one pack. The hash is the whole address, so any static host in any folder serves every deep link. */
export const PLACES = [
  'pack',
  'nameplate',
  'arrival',
  'live-tests',
  'live-test',
  'make-safe',
  'lid-off',
  'zone',
  'item',
  'fact',
  'before',
  'photos',
  'photo',
  'sheet',
  'since',
  'afterwards',
  'remedies',
  'owner',
  'publish',
  'card',
  'letter',
  'prices',
  'shoot-clock',
  'second-reader',
] as const;
export type Place = (typeof PLACES)[number];

export type Route =
  | { screen: 'bench' }
  | { screen: 'keep' }
  | { screen: 'regrade' }
  | { screen: 'sideBySide' }
  | { screen: 'tray' }
  | { screen: 'last' }
  | { screen: 'lost' }
  | { screen: 'pack'; packId: string; place: Place; id: string };

export const route = signal<Route>({ screen: 'bench' });

/** `#/` bench, `#/keep`, `#/keep/regrade`, `#/side-by-side`, `#/tray`, `#/last` (the pack open last), `#/<pack>`, `#/<pack>/<place>`, `#/<pack>/<place>/<id>`. */
export function parseRoute(hash: string): Route {
  const [first = '', place = 'pack', ...rest] = hash.replace(/^#?\/?/, '').split('/');
  if (first === '') return { screen: 'bench' };
  if (first === 'keep') return { screen: place === 'regrade' ? 'regrade' : 'keep' };
  if (first === 'side-by-side') return { screen: 'sideBySide' };
  if (first === 'tray') return { screen: 'tray' };
  if (first === 'last') return { screen: 'last' };
  const known = PLACES.find((name) => name === place);
  if (!/^[0-9a-f]{32}$/.test(first) || known === undefined) return { screen: 'lost' };
  const id = decoded(rest.join('/'));
  return id === null ? { screen: 'lost' } : { screen: 'pack', packId: first, place: known, id };
}

/** Null where an address was cut off in the middle of a character. */
function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}

export function hrefTo(packId: string, place: Place = 'pack', id = ''): string {
  return `#/${packId}${place === 'pack' ? '' : `/${place}`}${id === '' ? '' : `/${encodeURIComponent(id)}`}`;
}

export function goTo(href: string, options: { replace?: boolean } = {}): void {
  if (options.replace) history.replaceState(null, '', href);
  else history.pushState(null, '', href);
  readRoute();
}

export function watchRoute(): void {
  addEventListener('hashchange', readRoute);
  addEventListener('popstate', readRoute);
  readRoute();
}

function readRoute(): void {
  route.value = parseRoute(location.hash);
  scrollTo(0, 0);
}
