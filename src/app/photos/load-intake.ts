import type { Intake, IntakeOptions } from '../../photos/intake.ts';

type TakeInPhoto = (file: Blob, options: IntakeOptions, control?: { signal?: AbortSignal }) => Promise<Intake>;
let loading: Promise<TakeInPhoto> | null = null;

/** Loads photo intake with its worker on first use. A failed load is tried again the next time. */
export function loadIntake(): Promise<TakeInPhoto> {
  loading ??= start().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}

async function start(): Promise<TakeInPhoto> {
  const { makePhotoIntake } = await import('../../photos/take-in-photo.ts');
  return makePhotoIntake({
    startWorker: () => new Worker(new URL('../workers/photo-worker.ts', import.meta.url), { type: 'module' }),
  });
}
