import type { PackRecord } from '../../record/pack-record.ts';
import type { Item } from '../../schema/checklist.ts';
import type { Derived } from './figure.ts';

/** What a derivation may look at. */
export interface DeriveFrom {
  nameplate: PackRecord['nameplate'];
  tests: PackRecord['tests'];
  facts: PackRecord['facts'];
  derive: NonNullable<Item['derive']>;
}

/** Null: nothing was tested that bears on it. */
export type Derivation = (from: DeriveFrom) => Derived | null;
