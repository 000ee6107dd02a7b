import { afterEach, expect, it, vi } from 'vitest';
import { askToPersist, isPersisted, spaceUsed } from '../../src/storage/space.ts';

afterEach(() => vi.unstubAllGlobals());

it('says nothing is known where navigator.storage is undefined', async () => {
  vi.stubGlobal('navigator', {});
  expect([await spaceUsed(), await askToPersist(), await isPersisted()]).toEqual([null, 'unknown', false]);
  vi.stubGlobal('navigator', undefined);
  expect([await spaceUsed(), await askToPersist(), await isPersisted()]).toEqual([null, 'unknown', false]);
});

it('hands on 5 of 100 bytes, a granted and a refused persistence', async () => {
  const storage = {
    estimate: async () => ({ usage: 5, quota: 100 }),
    persist: async () => true,
    persisted: async () => true,
  };
  vi.stubGlobal('navigator', { storage });
  expect(await spaceUsed()).toEqual({ usedBytes: 5, quotaBytes: 100 });
  expect([await askToPersist(), await isPersisted()]).toEqual(['persisted', true]);
  storage.persist = async () => false;
  expect(await askToPersist()).toBe('refused');
});
