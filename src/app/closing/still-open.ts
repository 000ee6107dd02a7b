import { closingWords } from '../../text/closing-screens.ts';
import type { PackSession } from '../state/pack-session.ts';

/** What of a sheet is still open when it is about to be closed, in words; each stands on the sheet as well. */
export function stillOpen(session: PackSession): string[] {
  const grading = session.grading.value;
  const record = session.record.value;
  const { definition } = session.definition;
  const { dialog } = closingWords;
  const unsettled = grading.askedCount - grading.settledCount;
  const facts = definition.facts.filter(({ id }) => record.facts[id] === undefined).length;
  const photographed = new Set(record.photos.flatMap(({ itemIds }) => itemIds));
  const photoOf = new Map(definition.items.map(({ id, photo }) => [id, photo]));
  const withoutPhoto = grading.items.filter(({ itemId, grade, possible }) => {
    if (grade === null || possible.includes('doesNotApply') || photographed.has(itemId)) return false;
    const photo = photoOf.get(itemId);
    return photo === 'always' || (photo === 'fault' && (grade === 'weak' || grade === 'failed'));
  }).length;
  return [
    ...(unsettled === 0 ? [] : [dialog.unsettled(unsettled, grading.askedCount)]),
    ...(facts === 0 ? [] : [dialog.facts(facts)]),
    ...(withoutPhoto === 0 ? [] : [dialog.noPhoto(withoutPhoto)]),
    ...(record.afterwards.fate === undefined ? [dialog.noFate] : []),
  ];
}
