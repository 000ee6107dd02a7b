import { gradeRecord } from '../../grading/grade-record.ts';
import type { Grading } from '../../grading/grading.ts';
import { type ScoreMoves, scoreMoves } from '../../grading/score-moves.ts';
import { foldRecord } from '../../record/fold-record.ts';
import { words } from '../../text/words.ts';
import { cards } from '../state/bench.ts';
import { definitionByHash, type LoadedDefinition } from '../state/definitions.ts';
import { isNewerVersion } from '../state/is-newer-version.ts';
import { store } from '../state/store.ts';
import { newestOnBoard } from './newest-on-board.ts';
import { nextSlice } from './next-slice.ts';

/** One pack that has a newer version of its checklist on board, graded by both. Nothing of it was changed. */
export interface Surveyed {
  packId: string;
  label: string;
  /** Its sheet is closed: carried over, it becomes a revision. */
  closed: boolean;
  from: LoadedDefinition;
  to: LoadedDefinition;
  was: Grading;
  now: Grading;
  moves: ScoreMoves;
}

export interface Survey {
  /** In the order of the Bench; those whose score or verdict moves, and those of which neither does. */
  moved: Surveyed[];
  still: Surveyed[];
  /** Packs whose checklist is not on this phone. */
  unread: string[];
  lookedAt: number;
  all: number;
}

/** Grades every pack on the Bench by its own checklist and by the newest of that id, pack by pack. */
export async function surveyPacks({
  signal,
  onProgress,
}: {
  signal: AbortSignal;
  onProgress: (done: number, all: number) => void;
}): Promise<Survey> {
  const here = cards.value.filter(({ gone }) => !gone);
  const newest = new Map<string, Promise<LoadedDefinition | null>>();
  const newestOf = (id: string) => {
    const known = newest.get(id) ?? newestOnBoard(id);
    newest.set(id, known);
    return known;
  };
  const survey: Survey = { moved: [], still: [], unread: [], lookedAt: 0, all: here.length };
  for (const card of here) {
    if (signal.aborted) break;
    onProgress(survey.lookedAt, survey.all);
    await nextSlice();
    const found = await surveyed(card.packId, newestOf);
    if (found === 'unread') survey.unread.push(words.packLabel(card.name, card.sample));
    else if (found !== null) survey[found.moves.moved ? 'moved' : 'still'].push(found);
    survey.lookedAt++;
  }
  return survey;
}

/** Null of a pack that is graded by the newest already. */
async function surveyed(
  packId: string,
  newestOf: (id: string) => Promise<LoadedDefinition | null>,
): Promise<Surveyed | 'unread' | null> {
  const record = foldRecord(packId, await store().entriesOf(packId));
  if (!record.here || record.checklist === null) return null;
  const from = await definitionByHash(record.checklist.sha256);
  if (from === null) return 'unread';
  const to = await newestOf(from.definition.id);
  if (to === null || !isNewerVersion(to.definition.version, from.definition.version)) return null;
  const was = gradeRecord(from.definition, record);
  const now = gradeRecord(to.definition, record);
  const { name = '', sample = '' } = record.nameplate;
  return {
    packId,
    label: words.packLabel(name, sample),
    closed: record.sheet.now === 'closed',
    from,
    to,
    was,
    now,
    moves: scoreMoves({ definition: from.definition, grading: was }, { definition: to.definition, grading: now }),
  };
}
