import type { Page } from 'playwright-core';

type PicturePoint = readonly [x: number, y: number];

/** A code as a matrix of dark (true) and light modules, drawn with its light margin. */
export interface DrawnCode {
  dark: readonly (readonly boolean[])[];
  leftPx: number;
  topPx: number;
  modulePx: number;
}

export interface DrawnScene {
  widthPx: number;
  heightPx: number;
  codes?: readonly DrawnCode[];
  /** Filled four-sided figures. */
  shapes?: readonly { corners: readonly PicturePoint[]; colour: string }[];
}

const MARGIN_MODULES = 4;

/** A photograph drawn by the browser, as JPEG: codes and shapes on a grey ground. */
export async function drawnPhoto(page: Page, scene: DrawnScene): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ({ widthPx, heightPx, codes = [], shapes = [], margin }) => {
      const canvas = new OffscreenCanvas(widthPx, heightPx);
      const context = canvas.getContext('2d');
      if (context === null) throw new Error('drawnPhoto: needs a canvas');
      context.fillStyle = '#9aa0a3';
      context.fillRect(0, 0, widthPx, heightPx);
      for (const { corners, colour } of shapes) {
        context.fillStyle = colour;
        context.beginPath();
        for (const [x, y] of corners) context.lineTo(x, y);
        context.fill();
      }
      for (const { dark, leftPx, topPx, modulePx } of codes) {
        const side = (modules: number) => (modules + 2 * margin) * modulePx;
        context.fillStyle = '#f4f4f4';
        context.fillRect(leftPx, topPx, side(dark[0]?.length ?? 0), side(dark.length));
        context.fillStyle = '#141414';
        dark.forEach((row, y) => {
          row.forEach((isDark, x) => {
            if (!isDark) return;
            const at = [leftPx + (x + margin) * modulePx, topPx + (y + margin) * modulePx] as const;
            context.fillRect(at[0], at[1], modulePx, modulePx);
          });
        });
      }
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      let text = '';
      for (let from = 0; from < bytes.length; from += 30_000) {
        text += String.fromCharCode(...bytes.subarray(from, from + 30_000));
      }
      return btoa(text);
    },
    { ...scene, margin: MARGIN_MODULES },
  );
  return Buffer.from(base64, 'base64');
}
