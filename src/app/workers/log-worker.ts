import type { ToLogWorker } from '../../logs/log-messages.ts';
import { serveLog } from '../../logs/serve-log.ts';

/** Reads one bench log away from the page's own thread. */
declare const self: DedicatedWorkerGlobalScope;

const take = serveLog({ post: (message) => self.postMessage(message), breathe: makeBreathe() });
self.onmessage = ({ data }: MessageEvent<ToLogWorker>) => take(data);

/** A message to oneself queues behind those that wait; a timer would be held back by 4 ms each time. */
function makeBreathe(): () => Promise<void> {
  const channel = new MessageChannel();
  const waiting: (() => void)[] = [];
  channel.port1.onmessage = () => waiting.shift()?.();
  return () =>
    new Promise((resolve) => {
      waiting.push(resolve);
      channel.port2.postMessage(0);
    });
}
