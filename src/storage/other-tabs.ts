/** Tells other tabs which pack was written, and hears it from them. */
export interface OtherTabs {
  tell(packId: string): void;
  /** Returns how to stop listening. */
  listen(callback: (packId: string) => void): () => void;
  close(): void;
}

/** Over a BroadcastChannel; where there is none, tabs do not hear of each other until they read again. */
export function otherTabsOver(name: string): OtherTabs {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => {}, listen: () => () => {}, close: () => {} };
  const channel = new BroadcastChannel(name);
  const callbacks = new Set<(packId: string) => void>();
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (typeof data !== 'string') return;
    for (const callback of callbacks) callback(data);
  };
  return {
    tell: (packId) => channel.postMessage(packId),
    listen: (callback) => {
      callbacks.add(callback);
      return () => callbacks.delete(callback);
    },
    close: () => channel.close(),
  };
}
