import type { PackRecord } from '../../record/pack-record.ts';
import { OBTAINED_WORDS, obtainedWords } from '../../text/sheet-record.ts';
import { words } from '../../text/words.ts';

export interface Disclosure {
  /** "bought from a shop"; or that it is not stated. */
  obtained: string;
  /** Whether links pay a commission; null where it is not stated. */
  commission: string | null;
  /** "invented demo"; null of a real pack. */
  demo: string | null;
  /** All of it in one line, for a picture, a caption or the foot of a file. */
  line: string;
}

/** How the sample came to the tester and who pays whom: stands on everything that is published. */
export function disclosureOf({ nameplate, demo }: Pick<PackRecord, 'nameplate' | 'demo'>): Disclosure {
  const { obtained, obtainedFrom, paysCommission } = nameplate;
  const how = obtained === undefined ? undefined : OBTAINED_WORDS[obtained];
  const from = how === undefined || obtainedFrom === undefined ? how : obtainedWords.from(how, obtainedFrom);
  const commission =
    paysCommission === undefined ? null : paysCommission ? obtainedWords.commission : obtainedWords.noCommission;
  const invented = demo ? words.inventedDemo : null;
  const sample = from === undefined ? obtainedWords.unknown : obtainedWords.sample(from);
  return {
    obtained: from ?? obtainedWords.unknown,
    commission,
    demo: invented,
    line: [invented === null ? null : obtainedWords.invented, sample, commission]
      .filter((part) => part !== null)
      .join(' '),
  };
}
