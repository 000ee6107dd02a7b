import { signal } from '@preact/signals';
import type { IntakeProblem, TakenIn } from '../../photos/intake.ts';
import type { Put } from '../../storage/store.ts';
import { photoWords } from '../../text/photo-screens.ts';
import type { PackSession } from '../state/pack-session.ts';
import { loadIntake } from './load-intake.ts';

export interface PhotoPurpose {
  zone: string;
  itemId: string | null;
  detail: boolean;
}
export type Added =
  /** `wasThere`: the same picture was in the pack already, and stays in the place it had. */
  | { ok: true; photoId: string; wasThere: boolean }
  | { ok: false; problem: IntakeProblem | 'notSaved' | 'dropped'; fileName: string };

/** The file being taken in, for the screen; null at rest. */
export const takingIn = signal<{ fileName: string; stop: () => void } | null>(null);

/** Takes one file in, and writes photo, thumbnail, link and kept original in one transaction. */
export async function addPhoto(session: PackSession, file: File, purpose: PhotoPurpose): Promise<Added> {
  const abort = new AbortController();
  takingIn.value = { fileName: file.name, stop: () => abort.abort() };
  try {
    const takeInPhoto = await loadIntake();
    const keepOriginal = session.record.value.keepOriginals;
    const intake = await takeInPhoto(file, { detail: purpose.detail, keepOriginal }, { signal: abort.signal });
    if (!intake.ok) return { ok: false, problem: intake.problem, fileName: file.name };
    const { sha256 } = intake.photo;
    const wasThere = session.record.value.photos.some(({ id }) => id === sha256);
    const saved = await write(session, intake.photo, purpose);
    if (saved) return { ok: true, photoId: sha256, wasThere };
    // A closed sheet held it back, and the person chose to drop it.
    const problem = session.saving.value.now === 'notSaved' ? 'notSaved' : 'dropped';
    return { ok: false, problem, fileName: file.name };
  } finally {
    takingIn.value = null;
  }
}

function write(session: PackSession, photo: TakenIn, { zone, itemId, detail }: PhotoPurpose): Promise<boolean> {
  const known = session.record.value.photos.find(({ id }) => id === photo.sha256);
  const puts: Put[] = [];
  if (!known) puts.push({ subject: 'photo', part: photo.sha256, v: photoValue(photo, zone, detail) });
  if (itemId !== null) puts.push({ subject: 'photoItem', part: `${photo.sha256}/${itemId}`, v: true });
  const { type, bytes, thumb, original, sha256 } = photo;
  return session.put({
    puts,
    // What Make safe rests on is not taken out by an Undo pressed somewhere else.
    ...(zone !== 'make-safe' && puts.length > 0 && { undoLabel: photoWords.added }),
    photos: [
      { sha256, shelf: 'photos', content: { type, bytes } },
      { sha256, shelf: 'thumbs', content: { type: thumb.type, bytes: thumb.bytes } },
      ...(original
        ? [
            {
              sha256: original.sha256,
              shelf: 'originals' as const,
              content: { type: original.type, bytes: original.bytes },
            },
          ]
        : []),
    ],
  });
}

function photoValue(photo: TakenIn, zone: string, detail: boolean) {
  return {
    zone,
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    byteCount: photo.bytes.byteLength,
    originalSha256: photo.originalSha256,
    made: null,
    ...(photo.takenAt !== null && { takenAt: photo.takenAt }),
    ...(photo.original && { keptOriginal: photo.original.sha256 }),
    ...(detail && { detail: true }),
  };
}
