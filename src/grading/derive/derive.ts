import type { Item } from '../../schema/checklist.ts';
import type { DerivationName } from '../../schema/figures.ts';
import type { Judged } from '../judged.ts';
import { bmsVoltages, cellResistances, cellSpread, cellVoltages, lowestCell } from './cell-readings.ts';
import { chargeCurrent } from './charge-current.ts';
import { coldCharge } from './cold-charge.ts';
import type { Derivation } from './derivation.ts';
import type { Derived } from './figure.ts';
import { hot } from './hot.ts';
import { links, mainLeads } from './leads.ts';
import { overCurrent } from './over-current.ts';
import { readOut } from './read-out.ts';
import { standby } from './standby.ts';
import { terminalRise } from './terminal-rise.ts';
import { highVoltage, lowVoltage } from './voltage-cut-offs.ts';
import { wakeUp } from './wake-up.ts';

const DERIVE: Readonly<Record<DerivationName, Derivation>> = {
  overCurrent,
  highVoltage,
  lowVoltage,
  chargeCurrent,
  coldCharge,
  hot,
  cellVoltages,
  lowestCell,
  cellSpread,
  cellResistances,
  bmsVoltages,
  mainLeads,
  links,
  terminalRise,
  standby,
  wakeUp,
  readOut,
};

/** What the live tests say of an item; null for an item they do not bear on, or that nothing was tested for yet. */
export function derived(item: Item, { nameplate = {}, tests, facts }: Judged): Derived | null {
  if (item.derive === undefined || tests === undefined) return null;
  return DERIVE[item.derive.from]({ nameplate, tests, facts, derive: item.derive });
}
