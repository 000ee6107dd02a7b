import type { Lead } from '../../../schema/live-tests/lead.ts';
import { leadWords as say } from '../../../text/live-tests/results/lead.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { LiveContext } from './live-context.ts';
import { testName } from './test-rows.ts';

/** "Lead 2", without the tester's label: short enough for a plot on a phone. */
export function leadNumber(id: string, { tests }: Pick<LiveContext, 'tests'>): string {
  return testName(say.one, tests.leads, id);
}

/** "Lead 2 · plus, main lead". */
export function leadName(id: string, context: Pick<LiveContext, 'tests'>): string {
  const lead = context.tests.leads.find((one) => one.id === id);
  const name = leadNumber(id, context);
  const label = lead?.label?.trim();
  return label ? testWords.titled([name, label]) : name;
}

/** "main lead", "cell link", "3 in parallel". */
export function leadKind({ form, place, count }: Lead): string {
  const kind = form === 'bar' ? say.barPlaces[place] : say.places[place];
  return count === undefined || count === 1 ? kind : testWords.listed([kind, say.count(count)]);
}
