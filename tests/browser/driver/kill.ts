import { spawnSync } from 'node:child_process';
import type { Phone } from './phone.ts';

/** How to end the browser of a phone at once with every process it has, as when the phone's battery comes out. */
export async function killerOf({ context }: Phone): Promise<() => Promise<void>> {
  const cdp = await context.browser()?.newBrowserCDPSession();
  if (cdp === undefined) throw new Error('killerOf: this browser does not name its processes');
  const { processInfo } = await cdp.send('SystemInfo.getProcessInfo');
  const browserPid = processInfo.find(({ type }) => type === 'browser')?.id;
  if (browserPid === undefined) throw new Error('killerOf: no browser process');
  return async () => {
    const closed = new Promise((resolve) => context.once('close', resolve));
    if (process.platform === 'win32') spawnSync('taskkill', ['/PID', String(browserPid), '/T', '/F']);
    // It was started as the head of a group of its own: one signal reaches all of the group.
    else process.kill(-browserPid, 'SIGKILL');
    await closed;
  };
}
