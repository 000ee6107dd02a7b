import type { RecordCallout, RecordPhoto } from '../../record/pack-record.ts';

/** What hides a part of the picture: the only callouts that a second reader sees. */
export function coversOf({ callouts }: Pick<RecordPhoto, 'callouts'>): RecordCallout[] {
  return callouts.filter(({ kind }) => kind === 'cover');
}
