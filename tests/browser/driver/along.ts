import type { Page } from 'playwright-core';
import type { Grade } from '../../../src/schema/grade.ts';
import { factWords, itemWords } from '../../../src/text/item.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { choose } from './job.ts';
import { button, untilSaved } from './screen.ts';

export interface Visit {
  itemId: string;
  grade: Grade;
}

/**
 * Follows Next from the question on the screen to the last one, choosing the grade that `gradeOf` gives for an item and
 * the choice that `choiceOf` gives for a fact; `stop` may do more on an item's screen. Returns the items in their order.
 */
export async function answerAlong(
  page: Page,
  plan: {
    gradeOf: (itemId: string) => Grade;
    choiceOf: (factId: string) => string;
    stop?: (itemId: string) => Promise<void>;
  },
): Promise<Visit[]> {
  const visits: Visit[] = [];
  for (;;) {
    const [, kind, id = ''] = /\/(item|fact)\/([a-z0-9-]+)$/.exec(page.url()) ?? [];
    if (kind === undefined) return visits;
    if (kind === 'fact') {
      const fact = builtIn.facts.find((one) => one.id === id);
      const text = fact?.choices.find((one) => one.id === plan.choiceOf(id))?.text;
      if (fact === undefined || text === undefined) throw new Error(`answerAlong: no such choice for ${id}`);
      await page.getByRole('radio', { name: text, exact: true }).tap();
      await untilSaved(page, factWords.answered(fact.ask, text));
    } else {
      const grade = plan.gradeOf(id);
      await choose(page, grade, id);
      visits.push({ itemId: id, grade });
      await plan.stop?.(id);
    }
    const before = page.url();
    await button(page, itemWords.next).or(button(page, itemWords.lastOne)).tap();
    await page.waitForURL((url) => url.href !== before);
    await page.locator('h1').waitFor();
  }
}
