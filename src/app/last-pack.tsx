import { useEffect } from 'preact/hooks';
import { goTo } from './route.ts';

/** Where the shortcut of the installed app leads: to the pack that was open last, or to the bench. */
export function LastPack() {
  useEffect(() => goTo('#/', { replace: true }), []);
  return <div class="screen" />;
}
