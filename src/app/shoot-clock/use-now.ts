import { useEffect, useState } from 'preact/hooks';

/** The phone's clock, read anew as each second since `sinceMs` is full; at rest while that is null. */
export function useNow(sinceMs: number | null): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    if (sinceMs === null) return;
    let timer: ReturnType<typeof setTimeout>;
    const tick = () => {
      const readMs = Date.now();
      setNowMs(readMs);
      const intoMs = (((readMs - sinceMs) % 1000) + 1000) % 1000;
      timer = setTimeout(tick, 1000 - intoMs);
    };
    tick();
    return () => clearTimeout(timer);
  }, [sinceMs]);
  return nowMs;
}
