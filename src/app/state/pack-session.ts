import { batch, computed, signal } from '@preact/signals';
import { gradeRecord } from '../../grading/grade-record.ts';
import { foldRecord } from '../../record/fold-record.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Entry } from '../../schema/entry.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import type { NewPhotoBytes, Put, WriteProblem } from '../../storage/store.ts';
import { cardOf } from '../card-of.ts';
import { refreshBench } from './bench.ts';
import { type LoadedDefinition, loadedDefinition } from './definitions.ts';
import { gradeWhenChanged } from './grade-when-changed.ts';
import { newestWritten, provisionalEntries } from './provisional.ts';
import { store } from './store.ts';

export interface PendingChange {
  puts: Put[];
  photos?: NewPhotoBytes[];
  undoLabel?: string;
  definition?: { sha256: string; text: string };
}
export type Saving = { now: 'saved' | 'saving' } | { now: 'notSaved'; problem: WriteProblem };

/**
 * One pack that is open on the screen: its entries, and everything that follows from them. A change shows at once and
 * is called saved when its transaction has completed; one that could not be written stays, to be tried again.
 */
export class PackSession {
  readonly entries = signal<Entry[]>([]);
  readonly saving = signal<Saving>({ now: 'saved' });
  readonly undoLabel = signal<string | null>(null);
  /** What the last undo took back, until the next change. */
  readonly takenBack = signal<string | null>(null);
  readonly record = computed(() => ({
    ...foldRecord(this.packId, this.entries.value),
    newestAt: newestWritten(this.entries.value),
  }));
  readonly grading = computed(() => this.grade(this.record.value));
  private readonly grade: ReturnType<typeof gradeWhenChanged>;
  private waiting: PendingChange[] = [];
  private running: Promise<void> | null = null;
  /** Something else has written since the entries were read. */
  private isStale = false;

  constructor(
    readonly packId: string,
    readonly definition: LoadedDefinition,
    entries: Entry[],
    /** The definition it was graded by before it was carried over. */
    readonly earlier: LoadedDefinition | null = null,
  ) {
    this.entries.value = entries;
    this.grade = gradeWhenChanged(definition.definition);
  }

  /** Changes that are not written yet, oldest first. */
  get unsaved(): readonly PendingChange[] {
    return this.waiting;
  }

  /** Resolves when the change is written, or when it could not be (see `saving`). */
  async put(change: PendingChange): Promise<boolean> {
    // At one stroke: nobody may take what is not written yet for saved.
    batch(() => {
      this.entries.value = provisionalEntries(this.packId, this.entries.value, change.puts);
      this.saving.value = { now: 'saving' };
      this.takenBack.value = null;
    });
    this.waiting.push(change);
    await this.flush();
    return this.saving.value.now === 'saved';
  }

  /** Tries again what is still waiting. */
  flush(): Promise<void> {
    this.running ??= this.writeWaiting().finally(() => {
      this.running = null;
    });
    return this.running;
  }

  async undo(): Promise<void> {
    await this.flush();
    if (this.saving.value.now !== 'saved') return;
    const result = await store().undo(this.packId, (entries) => this.cardOf(foldRecord(this.packId, entries)));
    if (!result.ok) {
      this.saving.value = { now: 'notSaved', problem: result.problem };
      return;
    }
    this.takenBack.value = this.undoLabel.value;
    await this.reload();
  }

  /** Reads the entries again, after an undo or when another tab has written; what is being written goes first. */
  reload(): Promise<void> {
    this.isStale = true;
    return this.flush();
  }

  /** Judged by the checklist that the record names: another than the session's when it is carried over, or that is undone. */
  private cardOf(record: PackRecord): PackCard {
    const named = record.checklist && loadedDefinition(record.checklist.sha256);
    const isOther = named && named.sha256 !== this.definition.sha256;
    return cardOf(record, isOther ? gradeRecord(named.definition, record) : this.grade(record));
  }

  private async writeWaiting(): Promise<void> {
    let wrote = false;
    while (this.waiting.length > 0 || this.isStale) {
      if (this.waiting.length === 0) {
        await this.readAgain(wrote);
        wrote = false;
        continue;
      }
      const change = this.waiting[0];
      if (!change) break;
      this.saving.value = { now: 'saving' };
      const result = await store().write({
        packId: this.packId,
        puts: change.puts,
        card: this.cardOf(this.record.value),
        ...(change.photos && { photos: change.photos }),
        ...(change.undoLabel !== undefined && { undoLabel: change.undoLabel }),
        ...(change.definition && { definition: change.definition }),
      });
      if (!result.ok) {
        this.saving.value = { now: 'notSaved', problem: result.problem };
        return;
      }
      wrote = true;
      this.waiting.shift();
      const written = withWritten(this.entries.value, result.entries);
      this.entries.value = this.waiting.reduce((all, { puts }) => provisionalEntries(this.packId, all, puts), written);
      if (change.undoLabel !== undefined) this.undoLabel.value = change.undoLabel;
    }
    this.saving.value = { now: 'saved' };
    void refreshBench();
  }

  /** `cardIsDue`: the card was written without what the other tab wrote at the same time. */
  private async readAgain(cardIsDue: boolean): Promise<void> {
    this.isStale = false;
    try {
      const entries = await store().entriesOf(this.packId);
      const undoLabel = await store().undoLabel(this.packId);
      batch(() => {
        this.entries.value = this.waiting.reduce(
          (all, { puts }) => provisionalEntries(this.packId, all, puts),
          entries,
        );
        this.undoLabel.value = undoLabel;
      });
      if (cardIsDue) {
        await store().write({ packId: this.packId, puts: [], card: this.cardOf(foldRecord(this.packId, entries)) });
      }
    } catch (error) {
      // The records are closed, which is said over every screen.
      console.warn('pack: not read again', error);
    }
  }
}

/** Provisional entries are replaced by what was written. */
function withWritten(entries: Entry[], written: Entry[]): Entry[] {
  const byKey = new Map(written.map((entry) => [entry.key.join('\n'), entry]));
  return entries.map((entry) => byKey.get(entry.key.join('\n')) ?? entry);
}
