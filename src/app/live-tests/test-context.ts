import type { PackRecord } from '../../record/pack-record.ts';
import { settings } from '../state/settings.ts';
import type { TestContext } from './test-kind.ts';

export function contextOf({ nameplate, tests }: Pick<PackRecord, 'nameplate' | 'tests'>): TestContext {
  return { nameplate, tests, units: settings.value.units };
}
