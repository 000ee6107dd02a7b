import { expect } from 'vitest';
import { foldRecord } from '../../../src/record/fold-record.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { entry, PACK, stampAt } from '../../record/made-entries.ts';
import { deepFreeze } from '../deep-freeze.ts';

/** Id of the test at a place, from 1. */
export function id(place: number): string {
  return String(place).padStart(32, '0');
}

/** An entry of a live test, made at its place among the others. */
export function test(subject: string, place: number, value: object): Entry {
  return entry(subject, id(place), { ...value, made: stampAt(1000 + place) });
}

/** Readings at a cell of a set, or of one share of a parallel run. */
export function member(
  subject: 'cell' | 'parallelShare',
  of: number,
  given: { number: number; [reading: string]: number | undefined },
): Entry {
  const { number, ...value } = given;
  return entry(subject, `${id(of)}/${number}`, value);
}

/** The record that a nameplate and entries fold to; not one of them may be set aside. */
export function packOf(nameplate: Nameplate, ...entries: Entry[]): PackRecord {
  const claims = Object.entries(nameplate).map(([field, value]) => entry('nameplate', field, value));
  const record = foldRecord(PACK, [...claims, ...entries]);
  expect(record.setAside).toEqual([]);
  return deepFreeze(record);
}
