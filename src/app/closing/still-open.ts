import type { ItemResult } from '../../grading/grading.ts';
import { closingWords } from '../../text/closing-screens.ts';
import type { PackSession } from '../state/pack-session.ts';

/** What of a sheet is still open when it is about to be closed, in words; each stands on the sheet as well. */
export function stillOpen(session: PackSession): string[] {
  const grading = session.grading.value;
  const record = session.record.value;
  const { definition } = session.definition;
  const { dialog } = closingWords;
  const titles = new Map(definition.items.map(({ id, title }) => [id, title]));
  const titlesOf = (results: readonly ItemResult[]) => results.map(({ itemId }) => titles.get(itemId) ?? itemId);
  const unsettled = titlesOf(grading.items.filter(({ asked, settled }) => asked && !settled));
  const facts = definition.facts.filter(({ id }) => record.facts[id] === undefined).map(({ ask }) => ask);
  const photographed = new Set(record.photos.flatMap(({ itemIds }) => itemIds));
  const photoOf = new Map(definition.items.map(({ id, photo }) => [id, photo]));
  const withoutPhoto = titlesOf(
    grading.items.filter(({ itemId, grade, possible }) => {
      if (grade === null || possible.includes('doesNotApply') || photographed.has(itemId)) return false;
      const photo = photoOf.get(itemId);
      return photo === 'always' || (photo === 'fault' && (grade === 'weak' || grade === 'failed'));
    }),
  );
  return [
    ...(unsettled.length === 0 ? [] : [dialog.unsettled(unsettled, grading.askedCount)]),
    ...(facts.length === 0 ? [] : [dialog.facts(facts)]),
    ...(withoutPhoto.length === 0 ? [] : [dialog.noPhoto(withoutPhoto)]),
    ...(record.afterwards.fate === undefined ? [dialog.noFate] : []),
  ];
}
