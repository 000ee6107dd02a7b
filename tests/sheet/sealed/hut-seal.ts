import type { Entry } from '../../../src/schema/entry.ts';
import type { SealInput } from '../../../src/sheet/model/sealed/sealed-text.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';
import { HUT_CHECKLIST, hutRecord, NEWEST_MS, stampAt } from '../hut-pack.ts';

/** The hut pack of tests/sheet/hut-pack.ts, as entries. */
export const HUT_SEAL: SealInput = sealOfHut();

function sealOfHut(): SealInput {
  const { packId, checklist, nameplate, answers, facts } = hutRecord();
  const values: [subject: string, part: string, v: unknown][] = [
    ['pack', 'made', { demo: true }],
    ['pack', 'checklist', checklist],
    ['pack', 'route', 'whole'],
    ...Object.entries(nameplate).map(([part, v]): [string, string, unknown] => ['nameplate', part, v]),
    ...Object.entries(answers).map(([part, v]): [string, string, unknown] => ['answer', part, v]),
    ...Object.entries(facts).map(([part, choice]): [string, string, unknown] => ['fact', part, { choice }]),
  ];
  const entries = values.map(
    ([subject, part, v]): Entry => ({
      key: [packId, subject, part],
      v,
      at: stampAt(NEWEST_MS),
      by: 'd'.repeat(32),
    }),
  );
  return deepFreeze({
    packId,
    entries,
    definition: HUT_CHECKLIST,
    earlier: null,
    appVersion: '0.1.0',
    revision: 1,
    closedAtMs: NEWEST_MS,
  });
}

/** The same with one entry's value changed, or a new one. */
export function withValue(seal: SealInput, [subject, part]: [string, string], v: unknown): SealInput {
  const [packId] = [seal.packId];
  const others = seal.entries.filter(({ key }) => key[1] !== subject || key[2] !== part);
  const changed: Entry = { key: [packId, subject, part], v, at: stampAt(NEWEST_MS + 1), by: 'd'.repeat(32) };
  return { ...seal, entries: [...others, changed] };
}
