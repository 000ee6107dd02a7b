import { FONT_FAMILY } from '../drawing/palette.ts';

/** Before anything is painted on a canvas. Without the face the system's stands in, which is no reason to paint nothing. */
export async function loadTypeface(): Promise<void> {
  try {
    await Promise.all([400, 500, 600].map((weight) => document.fonts.load(`${weight} 40px '${FONT_FAMILY}'`)));
  } catch (error) {
    console.warn('canvas: typeface not loaded', error);
  }
}
