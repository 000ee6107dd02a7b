import { logWords as say } from '../../../text/logs/log.ts';
import { lazily } from '../../parts/lazily.tsx';
import type { LiveTestPart } from '../live-test-part.ts';

/** Logs of runs: brought in, mapped, read again. Its screens and the reader are fetched when first used. */
export const logPart: LiveTestPart = {
  id: 'log',
  title: say.title,
  belongs: 'closed',
  count: ({ logs }) => logs.length,
  newest: ({ tests }) => tests.logs.at(-1)?.name ?? '',
  Screen: lazily(() => import('../../logs/log-place.tsx').then(({ LogPlace }) => LogPlace)),
};
