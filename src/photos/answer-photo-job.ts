import type { PhotoJob, PhotoJobMessage } from './photo-job.ts';
import { runIntake } from './run-intake.ts';
import { shrinkNatively } from './shrink-natively.ts';

type Post = (message: PhotoJobMessage, moved: ArrayBuffer[]) => void;

/** The worker's side of one job. Bytes are moved to the page, not copied. */
export async function answerPhotoJob({ jobId, file, options }: PhotoJob, post: Post): Promise<void> {
  const end = await runIntake({
    file,
    options,
    path: 'worker',
    shrink: shrinkNatively,
    onStep: (step) => post({ jobId, kind: 'step', step }, []),
  });
  post({ jobId, kind: 'end', ...end }, end.intake.ok ? bytesIn(end.intake.photo) : []);
}

function bytesIn({ bytes, thumb, original }: Extract<PhotoJobEnd, { ok: true }>['photo']): ArrayBuffer[] {
  return original === null ? [bytes, thumb.bytes] : [bytes, thumb.bytes, original.bytes];
}

type PhotoJobEnd = Extract<PhotoJobMessage, { kind: 'end' }>['intake'];
