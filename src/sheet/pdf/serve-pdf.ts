import type { PhotoBytes } from '../../schema/photo.ts';
import type { FromPdfWorker, ToPdfWorker } from './pdf-messages.ts';
import { writePdf } from './write-pdf.ts';

/** Sends one message, giving the named buffers away. */
export type Post = (message: FromPdfWorker, transfer: ArrayBuffer[]) => void;

/** The worker's side: feed it every message that comes in. Photos are asked for one at a time and not kept. */
export function servePdf(post: Post): (message: ToPdfWorker) => void {
  const wanted = new Map<string, (photo: PhotoBytes | null) => void>();
  const photos = (photoId: string) =>
    new Promise<PhotoBytes | null>((resolve) => {
      wanted.set(photoId, resolve);
      post({ kind: 'wantPhoto', photoId }, []);
    });
  return (message) => {
    if (message.kind === 'photo') {
      wanted.get(message.photoId)?.(message.photo);
      wanted.delete(message.photoId);
      return;
    }
    const { sheet, paper, fonts } = message;
    writePdf({
      sheet,
      paper,
      fonts,
      photos,
      onProgress: (done, pages) => post({ kind: 'progress', done, pages }, []),
    }).then(
      (bytes) => post({ kind: 'done', bytes }, [bytes]),
      (reason: unknown) =>
        post({ kind: 'failed', message: reason instanceof Error ? reason.message : String(reason) }, []),
    );
  };
}
