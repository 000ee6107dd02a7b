import fc from 'fast-check';
import { keyText, mergeEntries } from '../../src/record/merge-entries.ts';
import { nextStamp } from '../../src/record/next-stamp.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { PACK } from './made-entries.ts';

/** A phone with its set of entries, its clock row, and a wall clock that nobody can trust. */
export interface Device {
  id: string;
  seen: string | null;
  entries: Entry[];
}

export interface Step {
  device: number;
  /** `give`: the set goes to another device. `revert`: the value that stood before the device's last write is written again. */
  does: 'write' | 'delete' | 'revert' | 'give';
  part: string;
  value: unknown;
  /** The wall clock at that moment: jumps back and forth by up to years. */
  wallMs: number;
  to: number;
}

export const DEVICES = 3;
export const PARTS = ['name', 'maker', 'model'];

export const anySteps: fc.Arbitrary<Step[]> = fc.array(
  fc.record({
    device: fc.nat(DEVICES - 1),
    does: fc.constantFrom('write', 'write', 'delete', 'revert', 'give', 'give'),
    part: fc.constantFrom(...PARTS),
    value: fc.constantFrom<unknown>('Wren', 'Dipper', 100, null, { a: 1 }),
    wallMs: fc.oneof(fc.nat(5), fc.nat(100_000_000_000)),
    to: fc.nat(DEVICES - 1),
  }),
  { maxLength: 24 },
);

export function newDevices(): Device[] {
  return Array.from({ length: DEVICES }, (_, i) => ({ id: String(i + 1).repeat(32), seen: null, entries: [] }));
}

/** Runs the steps; `onWrite` sees every write with what its device held before. */
export function run(
  steps: readonly Step[],
  onWrite: (entry: Entry, before: readonly Entry[]) => void = () => {},
): Device[] {
  const devices = newDevices();
  const lastBefore = new Map<Device, Entry>();
  for (const { device: index, does, part, value, wallMs, to } of steps) {
    const device = at(devices, index);
    if (does === 'give') {
      receive(at(devices, to), device.entries);
      continue;
    }
    const standing = device.entries.find(({ key }) => key[2] === part);
    const change = {
      write: { v: value },
      delete: { v: null, gone: true as const },
      revert: earlier(lastBefore.get(device)),
    };
    const undone = does === 'revert' ? (lastBefore.get(device)?.key[2] ?? part) : part;
    const entry = written(device, { part: undone, wallMs, ...change[does] });
    onWrite(entry, device.entries);
    if (standing && does !== 'revert') lastBefore.set(device, standing);
    device.entries = mergeEntries(device.entries, [entry]);
  }
  return devices;
}

/** As a transaction does it: the stamp is drawn after everything met so far. */
export function written(
  device: Device,
  { part, wallMs, ...rest }: { part: string; wallMs: number; v: unknown; gone?: true },
): Entry {
  device.seen = nextStamp({ seen: device.seen, nowMs: wallMs, deviceId: device.id });
  return { key: [PACK, 'nameplate', part], at: device.seen, by: device.id, ...rest };
}

/** As a restore does it: the clock takes note of every stamp, then the sets are merged. */
export function receive(device: Device, incoming: readonly Entry[]): void {
  for (const { at: stamp } of incoming) if (device.seen === null || stamp > device.seen) device.seen = stamp;
  device.entries = mergeEntries(device.entries, incoming);
}

/** What an undo writes: the earlier value, or that there was none. */
function earlier(before: Entry | undefined): { v: unknown; gone?: true } {
  if (before === undefined || before.gone) return { v: null, gone: true };
  return { v: before.v };
}

export function at<T>(list: readonly T[], index: number): T {
  const one = list[index];
  if (one === undefined) throw new RangeError(`at: no ${index} in a list of ${list.length}`);
  return one;
}

/** Merges the sets in the given order, each a random number of times. */
export function mergedInOrder(sets: readonly (readonly Entry[])[], order: readonly number[]): Entry[] {
  return order.reduce<Entry[]>((all, index) => mergeEntries(at(sets, index), all), []);
}

export const keysOf = (entries: readonly Entry[]) => entries.map(({ key }) => keyText(key));
