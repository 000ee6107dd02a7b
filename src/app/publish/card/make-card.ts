import type { Drawing, Palette } from '../../../drawing/display-list.ts';
import { paintCanvas } from '../../../drawing/paint-canvas.ts';
import { BENCH, FONT_FAMILY, PAPER } from '../../../drawing/palette.ts';
import { type CardShape, cardDrawing } from '../../../sheet/card/card-drawing.ts';
import type { CardModel } from '../../../sheet/card/card-model.ts';
import { loadTypeface } from '../../load-typeface.ts';
import { photoForExport } from '../../photos/photo-for-export.ts';
import { measuredDrawing } from './measured-drawing.ts';

/** `clear` is see-through but for strips in the colours of the bench: dark strips read on any video. */
export type CardGround = 'paper' | 'bench' | 'clear';

export interface MakeCard {
  model: CardModel;
  shape: CardShape;
  ground: CardGround;
}

export interface MadeCard {
  file: File;
  /** Photos whose bytes are not on this phone, or whose cover-ups could not be burnt in. */
  missingCount: number;
}

const PALETTES: Readonly<Record<CardGround, Palette>> = { paper: PAPER, bench: BENCH, clear: BENCH };

/** The picture card as a PNG of the card's own size. Photos come with their cover-ups burnt in or not at all. */
export async function makeCard({ model, shape, ground }: MakeCard): Promise<MadeCard> {
  const drawing = cardDrawing(model, { shape, opaque: ground !== 'clear' });
  await loadTypeface();
  const photos = await decodedPhotos(model);
  try {
    const blob = await pngOf(drawing, {
      palette: PALETTES[ground],
      opaque: ground !== 'clear',
      photos: photos.decoded,
    });
    const file = new File([blob], cardFileName(model, shape, ground), { type: 'image/png' });
    return { file, missingCount: photos.missingCount };
  } finally {
    for (const bitmap of photos.decoded.values()) bitmap.close();
  }
}

async function decodedPhotos({ findings }: CardModel) {
  const decoded = new Map<string, ImageBitmap>();
  const missing = new Set<string>();
  // One after the other: several full photos decoded at once are too much for a small phone.
  for (const { photo } of findings) {
    if (photo === null || decoded.has(photo.photoId)) continue;
    const bitmap = await decodedPhoto(photo);
    if (bitmap === null) missing.add(photo.photoId);
    else decoded.set(photo.photoId, bitmap);
  }
  return { decoded, missingCount: missing.size };
}

async function decodedPhoto(photo: Parameters<typeof photoForExport>[0]): Promise<ImageBitmap | null> {
  const content = await photoForExport(photo);
  if (content === null) return null;
  try {
    return await createImageBitmap(new Blob([content.bytes], { type: content.type }));
  } catch (error) {
    console.error('picture card: a photo could not be decoded', error);
    return null;
  }
}

interface PaintedCard {
  palette: Palette;
  opaque: boolean;
  photos: ReadonlyMap<string, ImageBitmap>;
}

async function pngOf(drawing: Drawing, { palette, opaque, photos }: PaintedCard): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = drawing.width;
  canvas.height = drawing.height;
  const surface = canvas.getContext('2d', { alpha: !opaque });
  if (surface === null) throw new Error('makeCard: no 2D canvas');
  surface.imageSmoothingQuality = 'high';
  const measure = (text: string, { size, weight }: { size: number; weight: number }) => {
    surface.font = `${weight} ${size}px '${FONT_FAMILY}', sans-serif`;
    return surface.measureText(text).width;
  };
  paintCanvas(measuredDrawing(drawing, measure), surface, {
    palette,
    scale: 1,
    drawPicture: ({ photoId, x, y, width, height }) => {
      const bitmap = photos.get(photoId);
      surface.fillStyle = palette.face;
      surface.fillRect(x, y, width, height);
      if (bitmap !== undefined) surface.drawImage(bitmap, x, y, width, height);
    },
  });
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  canvas.width = 0;
  canvas.height = 0;
  if (blob === null) throw new Error('makeCard: no PNG came back');
  return blob;
}

/** Letters, digits and dashes only, so that every phone and video program takes the name. */
export function cardFileName({ name, sample }: CardModel, shape: CardShape, ground: CardGround): string {
  const plain = [name, sample]
    .join(' ')
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 48);
  return ['underlid', plain, 'card', shape, ground]
    .filter((part) => part !== '')
    .join('-')
    .concat('.png');
}
