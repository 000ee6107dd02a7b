import { rulerWords as say } from '../../../text/live-tests/ruler.ts';
import { lazily } from '../../parts/lazily.tsx';
import type { LiveTestPart } from '../live-test-part.ts';

/** Distances from photos. Its screens are fetched when first used. */
export const rulerPart: LiveTestPart = {
  id: 'ruler',
  title: say.title,
  belongs: 'closed',
  count: ({ rulers }) => rulers.length,
  newest: ({ tests }) => tests.rulers.at(-1)?.label ?? say.unnamed(tests.rulers.length),
  Screen: lazily(() => import('./ruler-place.tsx').then(({ RulerPlace }) => RulerPlace)),
};
