import { expect, it } from 'vitest';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { overcurrentBlocks } from '../../../src/sheet/model/live-tests/overcurrent-blocks.ts';
import { remedyBlocks } from '../../../src/sheet/model/remedy-blocks.ts';
import { sheetContext } from '../../../src/sheet/model/sheet-context.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { named } from '../../grading/derive/tests-of.ts';
import { hutRecord } from '../hut-pack.ts';

/**
 * A 200 A pack that carries 800 A until heat opens it, with main leads of AWG 2 in 105 °C insulation. Common practice, no
 * source: such a pack has no over-current cutoff, and a fuse at its terminal is the remedy.
 */
const nameplate: Nameplate = { nominalVoltageV: 12.8, cellsInSeries: 4, stringsInParallel: 1, continuousCurrentA: 200 };
const tests: LiveTests = {
  ...NO_LIVE_TESTS,
  trips: [{ ...named(0), currentA: 800, heldForS: 45, opened: true, heatSeen: true, coolingNeeded: true }],
  leads: [
    {
      ...named(1),
      place: 'main',
      form: 'cable',
      way: 'printed',
      printedAwg: '2',
      metal: 'copper',
      insulation: 'pvc',
      insulationDegC: 105,
    },
  ],
};
const record = hutRecord({ nameplate, tests, answers: {}, facts: {} });
const grading = gradeRecord(builtIn, record);

it('fails the safety item on over-current, as measured: risk 1B, high', () => {
  const item = grading.items.find(({ itemId }) => itemId === 'overcurrent-cutoff');
  expect(item).toMatchObject({ grade: 'failed', because: 'measured', settled: true });
  expect(grading.findings[0]).toMatchObject({
    itemId: 'overcurrent-cutoff',
    severity: 1,
    likelihood: 'B',
    risk: 'high',
  });
});

// 1.25 × 200 A = 250 A; 150 % of the 210 A of AWG 2 (33 CFR 183.425 Table 5, 105 °C) = 315 A: 250 A fits.
it('names the 250 A fuse of the advice in the remedy that fits it, and counts it at both ends', () => {
  const context = sheetContext({
    definition: builtIn,
    definitionSha256: 'c'.repeat(64),
    record,
    grading,
    appVersion: '0.1.0',
    units: 'metric',
    locale: 'en',
    utcOffsetMinutes: 0,
  });
  const remedy = remedyBlocks(context).find((block) => block.kind === 'remedy' && block.remedyId === 'terminal-fuse');
  expect(remedy).toMatchObject({ open: null });
  expect(remedy?.kind === 'remedy' && remedy.text).toMatch(
    /By the fuse advice: 250\u00a0A, 14\.6\u00a0V DC or more, interrupting 20\u00a0kA or more\.$/,
  );
});

// k = √(3.45e-3 · 254.5 / 17.241e-6 · ln(394.5 / 339.5)) = 87.44 (BS 7671, PVC from 105 to 160 °C);
// (87.44 · 33.63 mm² / 800 A)² = 13.5 s, beyond 5 s and so a lower bound.
it('says beside it that the main leads stand those 800 A for at least 13.5 s', () => {
  const [block] = overcurrentBlocks({ ...record, units: 'metric' });
  expect(block?.kind).toBe('result');
  const rows = block?.kind === 'result' ? block.rows.map(({ label, value }) => `${label}: ${value}`) : [];
  expect(rows).toContainEqual(expect.stringMatching(/^Main leads stand.*800\u00a0A for at least 13\.5\u00a0s$/));
});
