import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { words, writeProblems } from '../../../src/text/words.ts';
import { button } from './screen.ts';

/** How a write goes wrong: the request is refused at once, or the transaction is aborted under it. */
export type Failing = 'refused' | 'aborted';

/** From now on every write of the page to its database fails; returns how to mend it. */
export async function failWrites(page: Page, how: Failing): Promise<() => Promise<void>> {
  await page.evaluate((kind) => {
    const { put, delete: remove } = IDBObjectStore.prototype;
    const fail = (store: IDBObjectStore, does: () => IDBRequest) => {
      if (kind === 'refused') throw new DOMException('forced: the disk does not answer', 'UnknownError');
      const request = does();
      store.transaction.abort();
      return request;
    };
    IDBObjectStore.prototype.put = function (...given) {
      return fail(this, () => put.apply(this, given)) as IDBRequest<IDBValidKey>;
    };
    IDBObjectStore.prototype.delete = function (...given) {
      return fail(this, () => remove.apply(this, given)) as IDBRequest<undefined>;
    };
    Reflect.set(globalThis, 'mendWrites', () => {
      IDBObjectStore.prototype.put = put;
      IDBObjectStore.prototype.delete = remove;
    });
  }, how);
  return () => page.evaluate(() => Reflect.get(globalThis, 'mendWrites')());
}

/** The notice that names what is not saved, with its reason; waits for it. */
export async function notSavedNotice(page: Page, problem: keyof typeof writeProblems = 'failed') {
  const notice = page.locator('.not-saved').last();
  await notice.getByText(writeProblems[problem]).waitFor();
  await notice.getByRole('button', { name: words.tryAgain }).waitFor();
  return notice;
}

/** Tries again and waits until nothing is left unsaved. */
export async function tryAgain(page: Page): Promise<void> {
  const over = page.getByRole('dialog').getByRole('button', { name: words.tryAgain });
  await ((await over.count()) > 0 ? over : button(page, words.tryAgain).last()).tap();
  // It goes while it is being tried and comes back if that fails: gone for good is gone for a moment longer.
  await page.waitForTimeout(400);
  await expect.poll(() => page.locator('.not-saved').count()).toBe(0);
}
