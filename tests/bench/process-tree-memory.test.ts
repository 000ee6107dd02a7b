import { spawn } from 'node:child_process';
import { expect, it } from 'vitest';
import { watchMemory } from './process-tree-memory.ts';

/** Waits for a line, then fills 200 MB and holds them for a second. */
const HUNGRY = `process.stdin.once('data', () => {
  globalThis.held = Buffer.alloc(200e6, 7);
  console.log('full');
  setTimeout(() => process.exit(0), 1000);
}); console.log('ready');`;

it.runIf(process.platform === 'linux')('sees the 200 MB that a process two below the watched one fills', async () => {
  const shell = spawn('sh', ['-c', '"$0" -e "$1" <&3 & wait', process.execPath, HUNGRY], {
    stdio: ['ignore', 'pipe', 'inherit', 'pipe'],
  });
  const said = (word: string) =>
    new Promise((resolve) => shell.stdout?.on('data', (data) => String(data).includes(word) && resolve(word)));
  await said('ready');
  const ended = watchMemory(shell.pid ?? 0);
  await new Promise((resolve) => setTimeout(resolve, 300));
  const filled = said('full');
  (shell.stdio[3] as unknown as NodeJS.WritableStream).write('go\n');
  await filled;
  await new Promise((resolve) => setTimeout(resolve, 500));
  const { beforeBytes = 0, peakBytes = 0 } = (await ended?.()) ?? {};
  expect(peakBytes - beforeBytes).toBeGreaterThan(199e6);
  expect(peakBytes - beforeBytes).toBeLessThan(240e6);
  await new Promise((resolve) => shell.once('close', resolve));
});
