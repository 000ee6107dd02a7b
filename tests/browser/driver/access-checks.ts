import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What WCAG calls serious or critical on the screen as it stands, as "rule: element". */
export async function violations(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(AXE);
  const { violations: found } = await page.evaluate(() =>
    (Reflect.get(globalThis, 'axe') as typeof axe).run(document, { resultTypes: ['violations'] }),
  );
  return found
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

/** Elements that reach past the right edge, if the screen can be pushed sideways. */
export function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.scrollWidth > document.documentElement.clientWidth;
    const named = (element: Element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`;
    return wide
      ? [...document.querySelectorAll('body *')]
          .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
          .map(named)
      : [];
  });
}

/** Whatever a finger is meant to hit and is smaller than 44 px; links in running text are left out, as WCAG 2.5.8 does. */
export function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'button, a[href], summary, select, label.tick, input:not([type="file"], [type="checkbox"])',
      ),
    ]
      .filter(
        (element) => element.closest('p') === null && element.checkVisibility() && !element.matches('.callout-mark'),
      )
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 43.5 || box.height < 43.5)
      .map(
        ({ element, box }) => `${element.outerHTML.slice(0, 80)} ${Math.round(box.width)} × ${Math.round(box.height)}`,
      ),
  );
}
