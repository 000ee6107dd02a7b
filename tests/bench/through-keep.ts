import type { Page } from 'playwright-core';
import { keepWords } from '../../src/text/keep.ts';
import { goTo } from '../browser/driver/screen.ts';

// Backup and restore through the screen Keep, driven from inside the page, so that no message to it and back is timed.

/** Anew, so that nothing of the run before is held. */
export async function reload(page: Page, hash: string): Promise<void> {
  await goTo(page, hash);
  await page.reload();
  await page.locator('h1').waitFor();
}

/** Taps through the backup as a person would, each button the moment it is there; ms from the first tap to "Saved". */
export function saveAll(page: Page): Promise<{ ms: number; bytes: number }> {
  const { save, nextPart, savedAll, backupFailed, partNotSaved } = keepWords;
  return page.evaluate(
    async (say) => {
      const tap = (found: HTMLButtonElement | undefined) => {
        found?.click();
        return found !== undefined;
      };
      const buttons = () => [...document.querySelectorAll('button')];
      const named = (name: string) => buttons().find(({ textContent }) => textContent === name);
      const said = (words: string) =>
        [...document.querySelectorAll('[role="status"]')].some(({ textContent }) => textContent?.includes(words));
      const saved = new Set<string>();
      const began = performance.now();
      tap(named(say.save));
      while (!said(say.savedAll)) {
        if (said(say.backupFailed) || said(say.partNotSaved)) throw new Error('saveAll: the backup failed');
        const part = buttons().find(({ textContent }) => /^Save underlid-.*\.zip$/.test(textContent ?? ''));
        const name = part?.textContent ?? '';
        if (part !== undefined && !saved.has(name)) {
          saved.add(name);
          tap(part);
        } else tap(named(say.nextPart));
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      return { ms: performance.now() - began, bytes: 0 };
    },
    { save, nextPart, savedAll, backupFailed, partNotSaved },
  );
}

/** Gives a file among the page's own to the restore box; ms until it is called restored. */
export function restoreFile(page: Page, fileName: string): Promise<{ ms: number; bytes: number }> {
  return page.evaluate(
    async ({ name, restored }) => {
      const folder = await navigator.storage.getDirectory();
      const file = await (await folder.getFileHandle(name)).getFile();
      const box = document.querySelector<HTMLInputElement>('input[data-restore]');
      if (box === null) throw new Error('restoreFile: there is no box for it');
      const given = new DataTransfer();
      given.items.add(file);
      const began = performance.now();
      box.files = given.files;
      box.dispatchEvent(new Event('change', { bubbles: true }));
      for (;;) {
        const lines = [...document.querySelectorAll('[role="status"] p')].map(({ textContent }) => textContent);
        if (lines.includes(restored)) return { ms: performance.now() - began, bytes: 0 };
        if (document.querySelector('.notice .hash') !== null) throw new Error('restoreFile: it was refused');
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    },
    { name: fileName, restored: keepWords.restored(fileName) },
  );
}

/** Files among the page's own, by name: parts in order. */
export async function filesOf(page: Page): Promise<{ name: string; bytes: number }[]> {
  const files = await page.evaluate(async () => {
    const found: { name: string; bytes: number }[] = [];
    const folder = await navigator.storage.getDirectory();
    for await (const handle of (folder as unknown as { values(): AsyncIterable<FileSystemHandle> }).values()) {
      if (handle.kind !== 'file') continue;
      const { size } = await (handle as FileSystemFileHandle).getFile();
      found.push({ name: handle.name, bytes: size });
    }
    return found;
  });
  return files.toSorted((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
}

/** Takes the database and every note of it away; the files stay. */
export async function emptyPhone(page: Page): Promise<void> {
  await page.evaluate(async () => {
    localStorage.clear();
    const gone = indexedDB.deleteDatabase('underlid');
    await new Promise((resolve, reject) => {
      gone.onsuccess = resolve;
      gone.onerror = reject;
    });
    localStorage.clear();
  });
  await reload(page, '#/');
}
