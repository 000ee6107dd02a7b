/**
 * Files that other apps shared in, until they are put where they belong. The service worker takes them while no page may
 * be open, so they lie in Cache Storage and not in the records: it must not hold the database open across an update.
 */
const CACHE = 'underlid-shared-in';
const FOLDER = '/underlid-shared-in/';
const NAME = 'x-file-name';
const AT = 'x-shared-at';

export interface SharedFile {
  id: string;
  name: string;
  type: string;
  atMs: number;
}

/** Keeps the files; rejects where the phone has no room, and then those before it are kept. */
export async function keepShared(files: readonly File[], atMs: number): Promise<void> {
  const cache = await caches.open(CACHE);
  for (const file of files) {
    const headers = { 'content-type': file.type, [NAME]: encodeURIComponent(file.name), [AT]: String(atMs) };
    await cache.put(addressOf(crypto.randomUUID()), new Response(file, { headers }));
  }
}

/** What waits, oldest first. Empty where the browser keeps no caches. */
export async function sharedFiles(): Promise<SharedFile[]> {
  if (typeof caches === 'undefined' || !(await caches.has(CACHE))) return [];
  const cache = await caches.open(CACHE);
  const found: SharedFile[] = [];
  for (const request of await cache.keys()) {
    const response = await cache.match(request);
    if (response) found.push(factsOf(request.url, response));
  }
  return found.sort((a, b) => a.atMs - b.atMs || (a.name < b.name ? -1 : 1));
}

export async function sharedFile(id: string): Promise<File | null> {
  const response = await (await caches.open(CACHE)).match(addressOf(id));
  if (!response) return null;
  const { name, type } = factsOf(addressOf(id), response);
  return new File([await response.blob()], name, { type });
}

export async function dropShared(id: string): Promise<void> {
  await (await caches.open(CACHE)).delete(addressOf(id));
}

function addressOf(id: string): string {
  return new URL(`${FOLDER}${id}`, location.href).href;
}

function factsOf(url: string, { headers }: Response): SharedFile {
  return {
    id: url.slice(url.lastIndexOf('/') + 1),
    name: decodeURIComponent(headers.get(NAME) ?? ''),
    type: headers.get('content-type') ?? '',
    atMs: Number(headers.get(AT) ?? 0),
  };
}
