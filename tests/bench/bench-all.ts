import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launchBrowser, PHONE } from '../browser/driver/launch.ts';
import { servePhotoPage } from '../browser/photographs/serve-photo-page.ts';
import { setAppAddress } from './app-address.ts';
import { benchBackup } from './backup-of-1-gb.ts';
import { benchRows, type Found, RUNS, SLOWDOWN } from './bench-rows.ts';
import { builtApp } from './built-app.ts';
import { firmnessDrawsMs } from './firmness-draws.ts';
import { gradingsPerSecond } from './gradings-per-second.ts';
import { benchHostileFiles } from './hostile-files.ts';
import { benchKills } from './kills.ts';
import { firstLoadSizes, precacheSize } from './load-sizes.ts';
import { benchLogImport } from './log-import.ts';
import { machineWords, thisMachine } from './machine.ts';
import { writeCameraPhotos, writeSmallPhotos } from './made-photos.ts';
import { benchPdf60Photos } from './pdf-60-photos.ts';
import { measurePhotoIntake } from './photo-intake.ts';
import { pickToSaved } from './pick-to-saved.ts';
import { plainTable } from './plain-table.ts';
import { tapToSaved } from './tap-to-saved.ts';

const OUT = 'tests/bench/out';

/** Measures everything once, prints it as a table and keeps it as JSON. Ends all it started, also when it fails. */
export async function benchAll(): Promise<void> {
  const ends: (() => unknown)[] = [];
  const begun = <T extends { close(): unknown }>(started: T): T => {
    ends.push(() => started.close());
    return started;
  };
  try {
    say('building and serving the app');
    const app = begun(await builtApp());
    setAppAddress(app.url);
    const photoPage = begun(await servePhotoPage());
    const browser = begun(await launchBrowser());
    const roll = mkdtempSync(join(tmpdir(), 'underlid-bench-roll-'));
    ends.push(() => rmSync(roll, { recursive: true, force: true }));
    const machine = thisMachine(browser.version());

    say('gradings');
    const gradings: Found['gradings'] = [];
    for (let run = 0; run < RUNS.gradings; run++) gradings.push(await gradingsPerSecond());
    say('firmness of an order');
    const firmnessMs = firmnessDrawsMs(RUNS.firmness);
    say('log of a million rows');
    const log = await benchLogImport(RUNS.log);
    say('PDF of 60 photos');
    const pdf = await benchPdf60Photos(RUNS.pdf);
    say('photo intake');
    const intakePage = await browser.newPage(PHONE);
    await intakePage.goto(photoPage.url);
    const intake = await measurePhotoIntake(intakePage, 12, RUNS.photos);
    await intakePage.close();
    say('photo picked to saved');
    const photoPaths = writeCameraPhotos(roll, RUNS.photos + 1);
    const pick = await pickToSaved(browser, { photoPageUrl: photoPage.url, photoPaths });
    const small = writeSmallPhotos(roll, 60);
    const taps: Found['taps'] = { slowed: [], unslowed: [] };
    for (let run = 1; run <= RUNS.taps; run++) {
      say(`taps, run ${run} of ${RUNS.taps}`);
      taps.slowed.push(await tapToSaved(browser, { slowdown: SLOWDOWN, photoPaths: small }));
      taps.unslowed.push(await tapToSaved(browser, { slowdown: 1, photoPaths: small }));
    }
    say('hostile files');
    const hostile = benchHostileFiles();
    say('100 kills');
    const kills = await benchKills(small);
    say('backup of a gigabyte');
    const backup = await benchBackup();

    const { js, css } = firstLoadSizes(app.folder);
    const precache = precacheSize(app.folder);
    const found: Found = {
      js,
      css,
      precache,
      gradings,
      firmnessMs,
      log,
      pdf,
      intake,
      pick,
      taps,
      kills,
      hostile,
      backup,
    };
    const rows = benchRows(found);
    console.log(`\n${plainTable(rows)}\n\n${machineWords(machine)}`);
    mkdirSync(OUT, { recursive: true });
    writeFileSync(`${OUT}/latest.json`, `${JSON.stringify({ machine, rows, found }, null, 2)}\n`);
    console.log(`Kept in ${OUT}/latest.json`);
  } finally {
    for (const end of ends.reverse()) await end();
  }
}

function say(step: string): void {
  console.log(`… ${step}`);
}
