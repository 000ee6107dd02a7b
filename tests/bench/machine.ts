import { arch, availableParallelism, cpus, loadavg, platform, totalmem } from 'node:os';

export interface Machine {
  at: string;
  cpu: string;
  cores: number;
  memoryGb: number;
  system: string;
  node: string;
  browser: string;
  /** Programs waiting for a core in the minute before the benchmarks; 0 where the system does not tell. */
  loadBefore: number;
}

export function thisMachine(browserVersion: string): Machine {
  return {
    at: new Date().toISOString(),
    cpu: cpus()[0]?.model.trim() ?? 'unknown',
    cores: availableParallelism(),
    memoryGb: totalmem() / 1e9,
    system: `${platform()} ${arch()}`,
    node: process.versions.node,
    browser: browserVersion,
    loadBefore: loadavg()[0] ?? 0,
  };
}

export function machineWords({ at, cpu, cores, memoryGb, system, node, browser, loadBefore }: Machine): string {
  const size = `${cores} cores, ${memoryGb.toFixed(0)} GB, ${system}`;
  return `${cpu}, ${size}; Node ${node}; Chromium ${browser}; load before ${loadBefore.toFixed(1)}; ${at}`;
}
