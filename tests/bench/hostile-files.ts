import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BenchRow } from './plain-table.ts';

/** Files given to the readers, and what became of them. `otherwise`: neither refused by name nor taken in as expected. */
export interface HostileFound {
  byHand: { refused: number; taken: number; otherwise: number };
  /** Thrown by the fuzzer; those of a kind count as otherwise together when one of them goes wrong. */
  fuzzed: { tried: number; otherwise: number };
}

export interface TestResult {
  title: string;
  status: string;
}

/** Runs the tests of tests/hostile, one for each file made by hand, and one for each kind that is fuzzed. */
export function benchHostileFiles(): HostileFound {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-bench-hostile-'));
  try {
    const report = join(folder, 'report.json');
    const given = ['run', '--config', 'tests/vitest.config.ts', 'tests/hostile', '--reporter=json', '--outputFile', report]; // biome-ignore format: one line
    spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', ...given], { stdio: 'ignore' });
    const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as {
      testResults: { assertionResults: TestResult[] }[];
    };
    return countHostile(testResults.flatMap(({ assertionResults }) => assertionResults));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Throws RangeError where it finds none of a sort: then the tests are called otherwise now. */
export function countHostile(results: readonly TestResult[]): HostileFound {
  const titled = (words: RegExp) => results.filter(({ title }) => words.test(title));
  const passed = (some: readonly TestResult[]) => some.filter(({ status }) => status === 'passed');
  const refusals = titled(/^that is .* is refused with its reason/s);
  const takings = titled(/^that is .* is taken in as plain text/s);
  const thrown = titled(/^\d+ (bundles|definitions|logs): each /);
  for (const some of [refusals, takings, thrown]) {
    if (some.length === 0)
      throw new RangeError(`countHostile: tests of every sort must be there, got ${results.length}`);
  }
  const tried = (some: readonly TestResult[]) => some.reduce((sum, { title }) => sum + Number.parseInt(title, 10), 0);
  const [refused, taken] = [passed(refusals).length, passed(takings).length];
  return {
    byHand: { refused, taken, otherwise: refusals.length + takings.length - refused - taken },
    fuzzed: { tried: tried(thrown), otherwise: tried(thrown) - tried(passed(thrown)) },
  };
}

export function hostileRows({ byHand, fuzzed }: HostileFound): BenchRow[] {
  const { refused, taken, otherwise } = byHand;
  const yardstick = 'each refused by name or taken in, storage as it was';
  return [
    {
      what: `hostile files tried by hand, ${refused + taken + otherwise}`,
      measured: `${refused} refused, ${taken} taken in as plain text, ${otherwise} otherwise`,
      yardstick,
      ratio: null,
    },
    {
      what: `hostile files fuzzed, ${fuzzed.tried}`,
      measured: `${fuzzed.otherwise} otherwise`,
      yardstick,
      ratio: null,
    },
  ];
}
