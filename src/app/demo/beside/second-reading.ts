import type { Put } from '../../../storage/store.ts';
import type { BesideFacts } from './beside.ts';

export function secondReadingEntries(_facts: BesideFacts): Put[] {
  return [];
}
