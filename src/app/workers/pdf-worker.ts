import type { ToPdfWorker } from '../../sheet/pdf/pdf-messages.ts';
import { servePdf } from '../../sheet/pdf/serve-pdf.ts';

/** Writes the PDF of one sheet away from the page's own thread. */
declare const self: DedicatedWorkerGlobalScope;

const take = servePdf((message, transfer) => self.postMessage(message, transfer));
self.onmessage = ({ data }: MessageEvent<ToPdfWorker>) => take(data);
