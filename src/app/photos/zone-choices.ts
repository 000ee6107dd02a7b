import type { Checklist } from '../../schema/checklist.ts';
import { photoWords } from '../../text/photo-screens.ts';

/** Where a photo can belong: the zones of the checklist, and the places outside them. */
export function zoneChoices(definition: Checklist): { id: string; text: string }[] {
  return [
    ...definition.zones.map(({ id, title }) => ({ id, text: title })),
    ...Object.entries(photoWords.outside).map(([id, text]) => ({ id, text })),
  ];
}
