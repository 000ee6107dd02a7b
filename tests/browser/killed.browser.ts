import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { cameraRoll } from './driver/camera-roll.ts';
import { killRounds } from './driver/kill-rounds.ts';

const roll = cameraRoll();
const photoPaths = ([1, 2, 3, 4, 5, 6, 7, 8] as const).map((orientation) =>
  roll.shot(`${orientation}.jpg`, { orientation }),
);
const folder = mkdtempSync(join(tmpdir(), 'underlid-killed-'));
afterAll(() => rmSync(folder, { recursive: true, maxRetries: 5 }));

it('ten times killed with all its processes, the browser has every answer and photo that was called saved', async () => {
  const found = await killRounds({
    folder,
    rounds: 10,
    photoPaths,
    seed: 20_261_124,
    mostCalls: 9,
    someAtAnyMoment: true,
  });
  expect(found).toMatchObject({ tried: 10, lostAnswers: [], lostPhotos: [], lostDatabases: 0 });
  // Enough was called saved and looked for to be worth the name.
  expect(found.calls).toBeGreaterThan(20);
  expect(found.lookedFor).toBeGreaterThan(40);
}, 180_000);
