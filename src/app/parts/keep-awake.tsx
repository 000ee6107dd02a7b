import { useEffect } from 'preact/hooks';

/**
 * Keeps the screen on while it stands on a screen: in Lid off hands are gloved and a phone that locks itself is a phone
 * laid down in the wrong moment. The browser lets go when the page is hidden, so it is asked again when it is back; where
 * it cannot or will not, the screen goes off as it always does.
 */
export function KeepAwake() {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let left = false;
    async function hold() {
      if (left || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const held = await navigator.wakeLock.request('screen');
        if (left) await held.release();
        else lock = held;
      } catch (error) {
        console.warn('screen: not kept awake', error);
      }
    }
    const again = () => void hold();
    again();
    document.addEventListener('visibilitychange', again);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', again);
      void lock?.release();
    };
  }, []);
  return null;
}
