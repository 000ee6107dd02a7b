import { expect, it } from 'vitest';
import { limitProblem } from '../../src/app/parts/limit-problem.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import { nameplateFields } from '../../src/schema/nameplate.ts';
import { restoreBundle } from '../../src/storage/bundle/restore-bundle.ts';
import { entry, PACK, stampAt } from '../record/made-entries.ts';
import { bytesOf, cardFrom, forge, json, leftOutOf, partsOf, readZip } from '../storage/bundle/bench-of-packs.ts';
import { answer, change, newPhone, storeOn, written } from '../storage/open-test-store.ts';

/** Slips of unit that version 2 took without a word: mV typed as V, g as kg, mA read as A. */
const SLIPS = [
  entry('nameplate', 'nominalVoltageV', 12_800),
  entry('nameplate', 'massKg', 35_000_000),
  entry('run', '4'.repeat(32), { made: stampAt(1000), currentA: 150_000 }),
];

it('restores figures of version 2 that are past what may be typed now, shows them and backs them up again', async () => {
  const from = await storeOn(newPhone());
  await written(from, change([answer('cell-vents', 'weak')]));
  const old = await forge(await bytesOf((await partsOf(from))[0]), {
    files: (files) => {
      files[`entries/${PACK}.json`] = json(SLIPS);
    },
    manifest: (manifest) => {
      manifest.schemaVersion = 2;
    },
  });
  const result = await readZip(old);
  if (!result.ok) throw new Error(result.detail);
  const store = await storeOn(newPhone());
  await restoreBundle(store, result.bundle, { bringBackDeleted: false, cardOf: cardFrom });
  const record = foldRecord(PACK, await store.entriesOf(PACK));
  expect(record.setAside).toEqual([]);
  expect(record.nameplate).toEqual({ nominalVoltageV: 12_800, massKg: 35_000_000 });
  expect(record.tests.runs.map(({ currentA }) => currentA)).toEqual([150_000]);
  expect(await leftOutOf(store)).toEqual([]);
});

it('asks for a figure within 2000 V all the same when one is typed', () => {
  expect(limitProblem(nameplateFields.nominalVoltageV, 12_800, { unit: 'V' })).toContain('At most');
});
