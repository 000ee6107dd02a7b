import type { Page } from 'playwright-core';
import type { Entry } from '../../../src/schema/entry.ts';

export interface StoredBytes {
  store: string;
  key: string;
  type: string;
  bytes: Buffer;
}

/** All entries as they lie in the phone's database, read past the app. */
export async function storedEntries(page: Page): Promise<Entry[]> {
  const rows = await readStore(page, 'entries');
  return rows.map(({ json }) => JSON.parse(json) as Entry);
}

/** Value of an entry, or undefined; a tombstone counts as none. */
export function storedValue(entries: Entry[], subject: string, part: string): unknown {
  return entries.find(({ key, gone }) => key[1] === subject && key[2] === part && !gone)?.v;
}

/** Writes an entry past the app, as another phone's would come in, a second newer than the present. */
export async function slipIn(page: Page, key: [packId: string, subject: string, part: string], v: unknown) {
  await page.evaluate(
    async (entry) => {
      const open = indexedDB.open('underlid');
      await new Promise((resolve) => open.addEventListener('success', resolve));
      const tx = open.result.transaction('entries', 'readwrite');
      const by = 'e'.repeat(32);
      const at = `${String(Date.now() + 1000).padStart(15, '0')}.000000.${by}`;
      tx.objectStore('entries').put({ ...entry, at, by }, entry.key);
      await new Promise((resolve) => tx.addEventListener('complete', resolve));
      open.result.close();
    },
    { key, v },
  );
}

/** Everything in the database that is bytes, and everything else as text. */
export async function everythingStored(page: Page): Promise<{ bytes: StoredBytes[]; text: string }> {
  const names = await page.evaluate(async () => {
    const open = indexedDB.open('underlid');
    await new Promise((resolve) => open.addEventListener('success', resolve));
    const found = [...open.result.objectStoreNames];
    open.result.close();
    return found;
  });
  const bytes: StoredBytes[] = [];
  let text = '';
  for (const store of names) {
    for (const row of await readStore(page, store)) {
      text += `${row.json}\n`;
      for (const base64 of row.base64)
        bytes.push({ store, key: row.key, type: row.type, bytes: Buffer.from(base64, 'base64') });
    }
  }
  return { bytes, text };
}

/** One store's rows; bytes inside a value are given beside its text. */
function readStore(page: Page, name: string) {
  return page.evaluate(async (store) => {
    const open = indexedDB.open('underlid');
    await new Promise((resolve) => open.addEventListener('success', resolve));
    const shelf = open.result.transaction(store).objectStore(store);
    const [keys, values] = [shelf.getAllKeys(), shelf.getAll()];
    await new Promise((resolve) => values.addEventListener('success', resolve));
    const base64Of = (bytes: ArrayBuffer) =>
      new Promise<string>((resolve) => {
        const reader = new FileReader();
        reader.onload = () => resolve(String(reader.result).split(',')[1] ?? '');
        reader.readAsDataURL(new Blob([bytes]));
      });
    const rows = [];
    for (const [index, value] of values.result.entries()) {
      const found: ArrayBuffer[] = [];
      const json = JSON.stringify(value, (_, part: unknown) => {
        if (!(part instanceof ArrayBuffer)) return part;
        found.push(part);
        return `${part.byteLength} bytes`;
      });
      const type = typeof value === 'object' && value !== null && 'type' in value ? String(value.type) : '';
      rows.push({
        key: JSON.stringify(keys.result[index]),
        json: json ?? '',
        type,
        base64: await Promise.all(found.map(base64Of)),
      });
    }
    open.result.close();
    return rows;
  }, name);
}
