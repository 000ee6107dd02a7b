// npm test: every check of the project in one run, each named with its time. Stops at nothing; fails if any failed.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const reports = mkdtempSync(join(tmpdir(), 'underlid-check-'));
const bin = (name) => join(root, 'node_modules', '.bin', name);

const steps = [
  ['types, pure layers', bin('tsc'), ['-p', 'tsconfig.json']],
  ['types, screens', bin('tsc'), ['-p', 'tsconfig.ui.json']],
  ['types, workers', bin('tsc'), ['-p', 'tsconfig.worker.json']],
  ['types, tests', bin('tsc'), ['-p', 'tsconfig.tests.json']],
  ['lint and format', bin('biome'), ['ci', '.']],
  ['unit, property, layer and checklist tests', ...vitest('tests/vitest.config.ts', 'unit')],
  ['build', bin('vite'), ['build', '--logLevel', 'warn']],
  ['bundle budget', process.execPath, ['.ci/budget.mjs']],
  ['browser tests on the built app', ...vitest('tests/browser/vitest.config.ts', 'browser')],
];

let passed = 0;
let failed = 0;
let skipped = 0;
/** Said once more at the end: whoever sees only the end of a long output must see why. */
const reasons = [];
for (const [name, command, args] of steps) {
  const began = performance.now();
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  const good = done.status === 0;
  good ? passed++ : failed++;
  console.log(`${good ? 'ok  ' : 'FAIL'} ${name}, ${((performance.now() - began) / 1000).toFixed(1)} s`);
}
for (const report of ['unit', 'browser']) {
  const path = join(reports, `${report}.json`);
  if (!existsSync(path)) continue;
  const counted = JSON.parse(readFileSync(path, 'utf8'));
  passed += counted.numPassedTests;
  failed += counted.numFailedTests;
  skipped += counted.numPendingTests;
  const tests = counted.testResults.flatMap(({ assertionResults }) => assertionResults);
  for (const { status, fullName, failureMessages } of tests) {
    if (status === 'failed') reasons.push(`FAILED ${fullName}\n${failureMessages.join('\n').slice(0, 1500)}`);
  }
}
rmSync(reports, { recursive: true, force: true });
if (reasons.length > 0) console.log(`\n${reasons.slice(0, 10).join('\n\n')}`);
// Only the measured logs may be left out: they are not part of the project (DEVELOPERS.md, "Measured logs").
console.log(
  `\n${passed} passed, ${failed} failed, ${skipped} skipped${skipped === 0 ? '' : ' (measured logs are not here)'}`,
);
process.exit(failed === 0 ? 0 : 1);

function vitest(config, report) {
  const output = join(reports, `${report}.json`);
  return [
    bin('vitest'),
    ['run', '--config', config, '--reporter=default', '--reporter=json', `--outputFile.json=${output}`],
  ];
}
