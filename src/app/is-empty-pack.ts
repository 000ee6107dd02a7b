import type { PackRecord } from '../record/pack-record.ts';

/**
 * Nothing was noted of a pack, and nothing said of it: it may be taken off the bench without a trace. One whose sheet was
 * closed never is, for somebody may hold its printed SHA-256.
 */
export function isEmptyPack(record: PackRecord): boolean {
  const { nameplate, answers, facts, photos, tests, makeSafe, words, afterwards, closings } = record;
  // The sample's number is filled in by the app.
  const typed = Object.keys(nameplate).filter((field) => field !== 'sample');
  const noted = [typed, photos, makeSafe, closings, ...Object.values(tests)];
  const said = [answers, facts, words, afterwards].map((fields) => Object.keys(fields));
  return [...noted, ...said].every(({ length }) => length === 0);
}
