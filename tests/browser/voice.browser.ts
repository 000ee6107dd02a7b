import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { VoiceNote } from '../../src/schema/voice-note.ts';
import { voiceWords } from '../../src/text/voice.ts';
import { storedEntries } from './driver/database.ts';
import { beginPack } from './driver/job.ts';
import { browserPath, FLAGS } from './driver/launch.ts';
import { emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { restoreBundles, type SavedFile, saveBundle } from './driver/save.ts';
import { goTo, tapButton, untilSaved } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
let packId: string;
let bundle: SavedFile;
beforeAll(async () => {
  // The browser's own made-up microphone: a beep each second.
  const args = [...FLAGS, '--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];
  browser = await chromium.launch({ executablePath: browserPath(), args });
  phone = await emptyPhone(browser, { permissions: ['microphone'] });
  packId = await beginPack(phone.page, { name: 'Spoken of' });
});
afterAll(() => browser.close());

const voices = async (of: Phone) =>
  (await storedEntries(of.page)).filter(({ key, gone }) => key[1] === 'voice' && !gone);

it('records a voice note on an item, keeps it and plays it back', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/item/handles`);
  await tapButton(page, voiceWords.record);
  await page.getByText('00:01').waitFor();
  await tapButton(page, voiceWords.stop);
  await untilSaved(page, voiceWords.added);
  const [entry] = await voices(phone);
  const voice = (entry?.v ?? {}) as VoiceNote;
  expect(voice.on).toEqual({ kind: 'item', id: 'handles' });
  expect(voice.durationS).toBeGreaterThan(1);
  expect(voice.byteCount).toBeGreaterThan(500);
  // Decoded by the browser's own decoder, not by ours.
  const secondsHeard = await page.evaluate(async () => {
    const audio = document.querySelector('audio');
    if (!audio?.src) throw new Error('no sound');
    const bytes = await new Promise<ArrayBuffer>((resolve, reject) => {
      const request = indexedDB.open('underlid');
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        const all = request.result.transaction('voices').objectStore('voices').getAll();
        all.onsuccess = () => {
          request.result.close();
          resolve(all.result[0].bytes);
        };
      };
    });
    const decoded = await new AudioContext().decodeAudioData(bytes.slice(0));
    return decoded.duration;
  });
  expect(secondsHeard).toBeGreaterThan(0.8);
  expect(Math.abs(secondsHeard - voice.durationS)).toBeLessThan(0.8);
  await expect
    .poll(() => page.evaluate(() => document.querySelector('audio')?.readyState ?? 0))
    .toBeGreaterThanOrEqual(1);
});

it('drops a recording when told to: still 1 kept', async () => {
  const { page } = phone;
  await tapButton(page, voiceWords.record);
  await page.getByText(voiceWords.recording).first().waitFor();
  await tapButton(page, voiceWords.drop);
  await page.getByRole('button', { name: voiceWords.record, exact: true }).waitFor();
  expect((await voices(phone)).length).toBe(1);
});

it('goes into the bundle byte for byte and comes back on another phone; nothing was ever asked for elsewhere', async () => {
  bundle = await saveBundle(phone.page);
  const [entry] = await voices(phone);
  const { byteCount } = (entry?.v ?? {}) as Partial<VoiceNote>;
  const files = unzipSync(new Uint8Array(readFileSync(bundle.path)));
  const path = Object.keys(files).find((name) => name.startsWith(`voices/${entry?.key[2]}`));
  expect(files[path ?? '']?.byteLength).toBe(byteCount);

  const other = await emptyPhone(browser);
  await restoreBundles(other.page, bundle.path);
  await expect.poll(async () => (await voices(other)).length).toBe(1);
  await goTo(other.page, `#/${packId}/item/handles`);
  await expect
    .poll(() => other.page.evaluate(() => document.querySelector('audio')?.readyState ?? 0))
    .toBeGreaterThanOrEqual(1);
  for (const one of [phone, other]) {
    expect(strangers(one)).toEqual([]);
    expect(one.complaints).toEqual([]);
  }
});

it('takes a voice note out and brings it back by undo: 0, then 1', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/item/handles`);
  await page.getByRole('region', { name: voiceWords.title }).getByText(voiceWords.takeOut).tap();
  await untilSaved(page, voiceWords.takenOut);
  expect((await voices(phone)).length).toBe(0);
  await tapButton(page, 'Undo');
  await expect.poll(async () => (await voices(phone)).length).toBe(1);
});
