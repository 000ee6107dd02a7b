import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type KillsFound, killRounds } from '../browser/driver/kill-rounds.ts';
import type { BenchRow } from './plain-table.ts';

/** How often the browser is killed. */
const KILLS = 100;

/**
 * Kills the whole process tree of the browser right after a change was called saved, and looks for everything that ever
 * was. The app must be served already.
 */
export async function benchKills(photoPaths: readonly string[]): Promise<KillsFound> {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-kills-'));
  try {
    const found = await killRounds({
      folder,
      rounds: KILLS,
      photoPaths: photoPaths.slice(0, 8),
      seed: 20_261_125,
      mostCalls: 5,
      someAtAnyMoment: false,
    });
    console.log(killsSentence(found));
    for (const one of [...found.lostAnswers, ...found.lostPhotos]) console.log(`  lost: ${one}`);
    return found;
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** "kills tried 100, lost 0". */
export function killsSentence(found: KillsFound): string {
  return `kills tried ${found.tried}, lost ${lostCount(found)}`;
}

export function killRows(found: KillsFound): BenchRow[] {
  const { tried, calls, lookedFor, lostAnswers, lostPhotos, lostDatabases } = found;
  return [
    {
      what: `whole browser killed ${tried} times right after "saved", ${calls} changes, looked for ${lookedFor} times`,
      measured: `lost ${lostAnswers.length} answers, ${lostPhotos.length} photos, ${lostDatabases} databases`,
      yardstick: 'aim: none',
      ratio: null,
    },
  ];
}

function lostCount({ lostAnswers, lostPhotos, lostDatabases }: KillsFound): number {
  return lostAnswers.length + lostPhotos.length + lostDatabases;
}
