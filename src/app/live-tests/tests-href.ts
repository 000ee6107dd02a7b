import type { Item } from '../../schema/checklist.ts';
import type { DerivationName } from '../../schema/figures.ts';
import { hrefTo } from '../route.ts';
import { LIVE_TEST_PARTS } from './live-test-parts.ts';

/** The part of the live tests in which what a figure is derived from is typed. */
const PART_OF: Readonly<Record<DerivationName, string>> = {
  overCurrent: 'trip',
  highVoltage: 'cut-off',
  lowVoltage: 'cut-off',
  chargeCurrent: 'cut-off',
  wakeUp: 'cut-off',
  coldCharge: 'sensor',
  hot: 'sensor',
  cellVoltages: 'cells',
  lowestCell: 'cells',
  cellSpread: 'cells',
  cellResistances: 'cells',
  bmsVoltages: 'cells',
  mainLeads: 'lead',
  links: 'lead',
  terminalRise: 'joint',
  standby: 'drain',
  readOut: 'read-out',
};

export function testsHref(packId: string, { derive }: Pick<Item, 'derive'>): string {
  const part = derive && LIVE_TEST_PARTS.find(({ id }) => id === PART_OF[derive.from]);
  return part ? hrefTo(packId, 'live-test', part.id) : hrefTo(packId, 'live-tests');
}
