import type { PhotoBytes } from '../../schema/photo.ts';
import type { Sheet } from '../model/sheet.ts';
import type { Paper } from './paper.ts';
import type { FontFiles } from './typeface.ts';

/** What the page and the PDF worker say to each other. One worker writes one sheet; to cancel it, it is ended. */
export type ToPdfWorker =
  | { kind: 'write'; sheet: Sheet; paper: Paper; fonts: FontFiles }
  | { kind: 'photo'; photoId: string; photo: PhotoBytes | null };

export type FromPdfWorker =
  | { kind: 'wantPhoto'; photoId: string }
  | { kind: 'progress'; done: number; pages: number }
  | { kind: 'done'; bytes: ArrayBuffer }
  | { kind: 'failed'; message: string };
