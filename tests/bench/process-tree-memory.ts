import { readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { BrowserContext } from 'playwright-core';

/** Memory of a browser with all its processes: the level just before some work, and the highest level seen during it. */
export interface MemoryTook {
  beforeBytes: number;
  peakBytes: number;
  samples: number;
}

const SAMPLE_MS = 100;

/**
 * Watches the memory of a process and all its descendants, 100 ms between two looks. Each process counts with its proportional share
 * (Pss of /proc/<pid>/smaps_rollup), so that what several share is counted once. Null where the system has no /proc.
 */
export function watchMemory(rootPid: number): (() => Promise<MemoryTook>) | null {
  if (process.platform !== 'linux') return null;
  const levels: number[] = [];
  let running = true;
  const sampled = (async () => {
    while (running) {
      levels.push(await treePssBytes(rootPid));
      await new Promise((resolve) => setTimeout(resolve, SAMPLE_MS));
    }
  })();
  return async () => {
    running = false;
    await sampled;
    return { beforeBytes: levels[0] ?? 0, peakBytes: Math.max(...levels), samples: levels.length };
  };
}

/** Pss of a process and its descendants; one that ends while it is being read counts as nothing. */
async function treePssBytes(rootPid: number): Promise<number> {
  const shares = await Promise.all(treeOf(rootPid).map(pssBytes));
  return shares.reduce((sum, bytes) => sum + bytes, 0);
}

async function pssBytes(pid: number): Promise<number> {
  const text = await readFile(`/proc/${pid}/smaps_rollup`, 'utf8').catch(() => '');
  return Number(/^Pss:\s+(\d+) kB$/m.exec(text)?.[1] ?? 0) * 1024;
}

function treeOf(rootPid: number): number[] {
  const children = new Map<number, number[]>();
  for (const name of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
    const parent = parentOf(Number(name));
    if (parent !== null) children.set(parent, [...(children.get(parent) ?? []), Number(name)]);
  }
  const tree = [rootPid];
  for (const pid of tree) tree.push(...(children.get(pid) ?? []));
  return tree;
}

/** Fourth field of /proc/<pid>/stat, after the name in brackets, which may hold anything. */
function parentOf(pid: number): number | null {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
  } catch {
    // It has ended since it was listed.
    return null;
  }
}

export async function browserPidOf(context: BrowserContext): Promise<number> {
  const cdp = await context.browser()?.newBrowserCDPSession();
  if (cdp === undefined) throw new Error('browserPidOf: this browser does not name its processes');
  const { processInfo } = await cdp.send('SystemInfo.getProcessInfo');
  const pid = processInfo.find(({ type }) => type === 'browser')?.id;
  if (pid === undefined) throw new Error('browserPidOf: no browser process');
  return pid;
}
