import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { SCENE_PLACES } from '../photographs/scene.ts';

export type Rgb = readonly [red: number, green: number, blue: number];

/** The made scene stands upright in the pixels given: each place has its colour, within what JPEG and scaling change. */
export function expectUpright(colours: readonly Rgb[], which: string): void {
  SCENE_PLACES.forEach(({ u, v, rgb, colour }, index) => {
    const seen = colours[index] ?? [0, 0, 0];
    const farthest = Math.max(...rgb.map((level, channel) => Math.abs(level - (seen[channel] ?? 0))));
    expect(farthest, `${which}: ${colour} at ${u}, ${v}, seen ${seen.join(' ')}`).toBeLessThan(25);
  });
}

/** Colours at the places of the made scene in an `<img>` of the page, as the browser shows it. */
export function coloursOfImage(page: Page, selector: string): Promise<Rgb[]> {
  const places = SCENE_PLACES.map(({ u, v }) => ({ u, v }));
  return page.locator(selector).evaluate(async (element, at) => {
    const image = element as HTMLImageElement;
    await image.decode();
    const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.drawImage(image, 0, 0);
    return at.map(({ u, v }): Rgb => {
      const [r = 0, g = 0, b = 0] = context.getImageData(
        Math.floor(u * canvas.width),
        Math.floor(v * canvas.height),
        1,
        1,
      ).data;
      return [r, g, b];
    });
  }, places);
}
