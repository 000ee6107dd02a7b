import type { ComponentType } from 'preact';
import type { LiveTests } from '../../schema/live-tests/live-tests.ts';
import type { PackSession } from '../state/pack-session.ts';
import type { TestContext } from './test-kind.ts';

/** A line of the Live tests and the screens behind it. `oneByOne(kind)` makes one; others may bring their own screen. */
export interface LiveTestPart {
  /** First step of its address: `live-test/<id>`. */
  id: string;
  title: string;
  /** Hot and cold sensor tests belong to the live and open pack and stand behind a gate of their own. */
  belongs: 'closed' | 'sensors';
  count(tests: LiveTests): number;
  /** The newest test in a line; empty without one. */
  newest(context: TestContext): string;
  /** `testId` is what follows in the address: empty for the list, else 32 hexadecimal digits. */
  Screen: ComponentType<{ session: PackSession; testId: string }>;
}

/** Lines that hold what tests are made with, and are no tests themselves. */
const AIDS: readonly string[] = ['instrument', 'log'];

/** How many tests of any kind there are. */
export function testCountOf(parts: readonly LiveTestPart[], tests: LiveTests): number {
  return parts.filter(({ id }) => !AIDS.includes(id)).reduce((sum, part) => sum + part.count(tests), 0);
}
