import { sha256Hex } from '../../photos/sha256-hex.ts';
import { checklistsWords as say } from '../../text/checklists.ts';
import { writeProblems } from '../../text/words.ts';
import { type ChecklistOnBoard, checklistsOnBoard, markLoaded } from '../state/checklists-on-board.ts';
import { problemOf } from '../state/kept.ts';
import { store } from '../state/store.ts';
import { type ProblemLine, type ReadChecklist, readChecklist, tooLarge } from './read-checklist.ts';

/** What became of a file: `lines` are what is wrong in it, `note` what else is to be known. */
export interface Loaded {
  sentence: string;
  note: string | null;
  lines: ProblemLine[];
  more: number;
  isOnBoard: boolean;
}

/** Loads a checklist from a file. It is kept only if it is right in everything; a file that is refused changes nothing. */
export async function loadChecklist(file: File): Promise<Loaded> {
  const read = tooLarge(file.size) ?? readChecklist(await file.arrayBuffer());
  if (!read.ok) return refusal(file.name, read);
  const { definition, text } = read;
  const { id, version, title } = definition;
  const sha256 = await sha256Hex(new TextEncoder().encode(text));
  const onBoard = await checklistsOnBoard();
  const same = onBoard.find((one) => one.sha256 === sha256);
  if (same !== undefined && same.origin !== 'came') return said(say.isHere(title, id, version));
  const namesakes = onBoard.filter((one) => one.id === id && one.version === version && one.sha256 !== sha256);
  if (namesakes.some(isBuiltIn)) {
    return refusal(file.name, { ok: false, sentence: say.reasons.builtInName(id, version), lines: [], more: 0 });
  }
  try {
    // The mark first: without its text it marks nothing, while a text without its mark would seem to have come by itself.
    await markLoaded(sha256, true);
    await store().keepDefinition(sha256, text);
  } catch (error) {
    console.warn('checklist: not kept', error);
    return { sentence: writeProblems[problemOf(error)], note: null, lines: [], more: 0, isOnBoard: false };
  }
  return { ...said(say.loaded(title, id, version)), note: namesakes.length > 0 ? say.namesake : null };
}

function said(sentence: string): Loaded {
  return { sentence, note: null, lines: [], more: 0, isOnBoard: true };
}

function refusal(fileName: string, { sentence, lines, more }: ReadChecklist & { ok: false }): Loaded {
  return { sentence: say.refused(fileName, sentence), note: null, lines, more, isOnBoard: false };
}

function isBuiltIn({ origin }: ChecklistOnBoard): boolean {
  return origin === 'builtIn';
}
