import { useEffect } from 'preact/hooks';
import { goTo, hrefTo } from './route.ts';
import { cards } from './state/bench.ts';
import { keptOnPhone } from './state/kept.ts';
import { LAST_PACK } from './state/open-pack.ts';

/** Where the shortcut of the installed app leads: to the pack that was open last; to the bench where it has gone. */
export function LastPack() {
  useEffect(() => {
    void keptOnPhone<string>(LAST_PACK).then((packId) => {
      const isHere = cards.value.some((card) => card.packId === packId && !card.gone);
      goTo(packId !== null && isHere ? hrefTo(packId) : '#/', { replace: true });
    });
  }, []);
  return <div class="screen" />;
}
