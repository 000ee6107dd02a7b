import { foldRecord } from '../../record/fold-record.ts';
import { keyText } from '../../record/merge-entries.ts';
import { stampMs } from '../../record/stamp-ms.ts';
import { checkDefinition } from '../../schema/check-definition.ts';
import type { Checklist } from '../../schema/checklist.ts';
import type { Entry, EntryKey } from '../../schema/entry.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import { type ReadBundle, readBundle, type VerifiedPart } from '../../storage/bundle/read-bundle.ts';
import type { TextChange } from '../../storage/bundle/read-entries.ts';
import { type RestoreReport, restoreBundle, type StopReason } from '../../storage/bundle/restore-bundle.ts';
import { entryName } from '../../text/entry-name.ts';
import type { MissingCounts } from '../../text/keep.ts';
import { words } from '../../text/words.ts';
import { bareCard, cardFromEntries } from '../card-of.ts';
import { definitionByHash, parsedOrNull } from '../state/definitions.ts';
import { forgetOpenPack } from '../state/open-pack.ts';
import { store } from '../state/store.ts';
import { heldSession } from '../state/unsaved-sessions.ts';
import { type NewestOfFiles, newestOfFiles } from './newest-of-files.ts';

export interface Watched {
  signal: AbortSignal;
  onProgress(fileName: string, doneFrac: number): void;
}

export type ReadFile = { fileName: string } & ReadBundle;
export interface GoodFile {
  fileName: string;
  bundle: VerifiedPart;
}

/** Checks every file whole; nothing is written. Throws the signal's reason when stopped. */
export async function checkFiles(files: readonly File[], { signal, onProgress }: Watched): Promise<ReadFile[]> {
  const read: ReadFile[] = [];
  for (const file of files) {
    onProgress(file.name, 0);
    const result = await readBundle(file, { signal, onProgress: (doneFrac) => onProgress(file.name, doneFrac) });
    read.push({ fileName: file.name, ...result });
  }
  return read;
}

/** What all files together did to one pack. */
export interface PackOutcome {
  packId: string;
  label: string;
  added: boolean;
  written: EntryKey[];
  newerHere: EntryKey[];
  deletedHere: EntryKey[];
  broughtBack: EntryKey[];
  missing: MissingCounts;
}

export interface Restored {
  /** Files that were taken in whole. */
  files: string[];
  packs: PackOutcome[];
  stopped: { label: string; problem: StopReason } | null;
  skippedCount: number;
  /** Deleted here after the backup, by name, each once. */
  deleted: string[];
  cleaned: (TextChange & { name: string })[];
  /** Files dated ahead of this phone's clock. */
  ahead: { fileName: string; atMs: number }[];
}

/** Our choice: a clock that is a year out is wrong beyond any time zone or mistyped day. */
const AHEAD_MS = 365 * 86_400_000;

/** Merges checked files one after the other; stops at the first that fails, or at the signal. */
export async function takeIn(
  good: readonly GoodFile[],
  { bringBackDeleted, signal, onProgress }: Watched & { bringBackDeleted: boolean },
): Promise<Restored> {
  const restored: Restored = {
    files: [],
    packs: [],
    stopped: null,
    skippedCount: 0,
    deleted: [],
    cleaned: [],
    ahead: [],
  };
  const newest = newestOfFiles(good.map(({ bundle }) => bundle));
  for (const { fileName, bundle } of good) {
    onProgress(fileName, 0);
    const naming = await namingOf(bundle);
    const packs = bundle.packs.map(({ packId }) => ({ packId, entries: newest.of(packId) }));
    const report = await restoreBundle(store(), bringBackDeleted ? { ...bundle, packs } : bundle, {
      bringBackDeleted,
      signal,
      onProgress: (doneFrac) => onProgress(fileName, doneFrac),
      cardOf: naming.cardOf,
    });
    add(restored, { fileName, bundle, report, naming, newest });
    if (report.stopped !== null) {
      const { packId, problem } = report.stopped;
      restored.stopped = { label: naming.labelOf(packId), problem };
      break;
    }
  }
  return restored;
}

type Naming = Awaited<ReturnType<typeof namingOf>>;
interface TakenFile extends GoodFile {
  report: RestoreReport;
  naming: Naming;
  newest: NewestOfFiles;
}

function add(restored: Restored, { fileName, bundle, report, naming, newest }: TakenFile): void {
  if (report.stopped === null) restored.files.push(fileName);
  restored.skippedCount += report.skipped.length;
  const newestMs = newestMsIn(bundle);
  if (newestMs > Date.now() + AHEAD_MS) restored.ahead.push({ fileName, atMs: newestMs });
  for (const { packId, missingPhotos, missingLogs, missingSealed, missingVoices, ...merged } of report.packs) {
    forgetOpenPack(packId);
    // One of which something is not written yet is held until it is, and must not go by what stood here before.
    void heldSession(packId)?.reload();
    const before = restored.packs.find((pack) => pack.packId === packId);
    const outcome: PackOutcome = {
      packId,
      label: naming.labelOf(packId),
      added: merged.added || before?.added === true,
      written: both(before?.written, merged.written),
      newerHere: both(before?.newerHere, merged.newerHere),
      deletedHere: both(before?.deletedHere, merged.deletedHere),
      broughtBack: both(before?.broughtBack, merged.broughtBack),
      // Of the last part alone: what an earlier one lacked may have come since.
      missing: {
        photos: missingPhotos.length,
        logs: missingLogs.length,
        sheets: missingSealed.length,
        voices: missingVoices.length,
      },
    };
    if (before) restored.packs.splice(restored.packs.indexOf(before), 1, outcome);
    else restored.packs.push(outcome);
    for (const key of merged.deletedHere) {
      const entry = naming.entryOf(key);
      if (entry !== undefined && !newest.has(entry)) continue;
      const name = `${outcome.label}: ${naming.nameOf(key)}`;
      if (!restored.deleted.includes(name)) restored.deleted.push(name);
    }
  }
  const taken = new Set(report.packs.map(({ packId }) => packId));
  for (const change of bundle.textChanges) {
    if (!taken.has(change.key[0]) || restored.cleaned.some((one) => isSamePlace(one, change))) continue;
    restored.cleaned.push({ ...change, name: `${naming.labelOf(change.key[0])}: ${naming.nameOf(change.key)}` });
  }
}

/** By the entries, which are what counts, not by what the manifest says of them. */
function newestMsIn({ packs }: VerifiedPart): number {
  let newestMs = 0;
  for (const { entries } of packs) for (const { at } of entries) newestMs = Math.max(newestMs, stampMs(at));
  return newestMs;
}

function both(before: readonly EntryKey[] = [], more: readonly EntryKey[] = []): EntryKey[] {
  const known = new Set(before.map(keyText));
  return [...before, ...more.filter((key) => !known.has(keyText(key)))];
}

function isSamePlace(a: TextChange, b: TextChange): boolean {
  return a.place === b.place && keyText(a.key) === keyText(b.key);
}

/** Words and cards of a bundle's packs, by the definitions in it and those here. */
async function namingOf({ packs, definitions: texts }: VerifiedPart) {
  const definitions = new Map<string, Checklist>();
  for (const { sha256, text } of texts) {
    const checked = checkDefinition(parsedOrNull(text));
    if (checked.ok) definitions.set(sha256, checked.definition);
  }
  const labels = new Map<string, string>();
  const entries = new Map<string, Entry>();
  const titles = new Map<string, Map<string, string>>();
  for (const pack of packs) {
    const record = foldRecord(pack.packId, pack.entries);
    labels.set(pack.packId, words.packLabel(record.nameplate.name ?? '', record.nameplate.sample ?? ''));
    titles.set(pack.packId, titlesIn(definitions.get(record.checklist?.sha256 ?? '')));
    for (const entry of pack.entries) entries.set(keyText(entry.key), entry);
    // A pack that was carried over here keeps the checklist it has, and an older backup does not hold that one.
    const reference = foldRecord(pack.packId, await store().entriesOf(pack.packId)).checklist;
    const here = reference && (await definitionByHash(reference.sha256));
    if (here) definitions.set(here.sha256, here.definition);
  }
  return {
    entryOf: (key: EntryKey) => entries.get(keyText(key)),
    labelOf: (packId: string) => labels.get(packId) ?? packId,
    nameOf: (key: EntryKey) => {
      const titleOf = (id: string) => titles.get(key[0])?.get(id) ?? id;
      return entryName({ key, v: entries.get(keyText(key))?.v, titleOf });
    },
    cardOf: (all: Entry[]): PackCard => {
      const packId = all[0]?.key[0] ?? '';
      const record = foldRecord(packId, all);
      const definition = record.checklist && definitions.get(record.checklist.sha256);
      const card = definition ? cardFromEntries(packId, all, definition) : bareCard(record);
      labels.set(packId, words.packLabel(card.name, card.sample));
      return card;
    },
  };
}

function titlesIn(definition: Checklist | undefined): Map<string, string> {
  if (definition === undefined) return new Map();
  const { items, facts, zones, remedies } = definition;
  return new Map([
    ...remedies.map(({ id, text }): [string, string] => [id, text]),
    ...zones.map(({ id, title }): [string, string] => [id, title]),
    ...facts.map(({ id, ask }): [string, string] => [id, ask]),
    ...items.map(({ id, title }): [string, string] => [id, title]),
  ]);
}
