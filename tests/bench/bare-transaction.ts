import type { Page } from 'playwright-core';

/**
 * The least a browser can do to keep an answer: one row of an answer's size, written in one transaction as durably as
 * the app writes, into a database of its own in the same page; ms from the call to its completion.
 */
export function bareTransactionMs(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const open = indexedDB.open('bench-bare', 1);
    open.onupgradeneeded = () => open.result.createObjectStore('rows');
    await new Promise((resolve, reject) => {
      open.onsuccess = resolve;
      open.onerror = reject;
    });
    const row = {
      key: ['0'.repeat(32), 'answer', 'an-item'],
      v: { kind: 'grade', grade: 'sound', evidence: 'seen' },
      at: `000000000000000.000000.${'0'.repeat(32)}`,
      by: '0'.repeat(32),
    };
    const began = performance.now();
    const tx = open.result.transaction('rows', 'readwrite', { durability: 'strict' });
    tx.objectStore('rows').put(row, row.key);
    await new Promise((resolve, reject) => {
      tx.oncomplete = resolve;
      tx.onabort = reject;
    });
    const tookMs = performance.now() - began;
    open.result.close();
    return tookMs;
  });
}
