import { batch, computed, signal } from '@preact/signals';
import { gradeRecord } from '../../grading/grade-record.ts';
import { foldRecord } from '../../record/fold-record.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { isOfTheSheet } from '../../record/sealed-entries.ts';
import type { Entry } from '../../schema/entry.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import type { Change, NewPhotoBytes, Put, WriteProblem } from '../../storage/store.ts';
import { cardOf } from '../card-of.ts';
import { takeMarkPuts, unwrittenMarks } from '../shoot-clock/take-marks.ts';
import { refreshBench } from './bench.ts';
import { isHeldBack, reopeningPuts } from './closed-guard.ts';
import { type LoadedDefinition, loadedDefinition } from './definitions.ts';
import { gradeWhenChanged } from './grade-when-changed.ts';
import { newestWritten, provisionalEntries } from './provisional.ts';
import { isMended, nextPast } from './refused-changes.ts';
import { store } from './store.ts';
import { holdUnshown, releaseUnshown } from './unsaved-sessions.ts';

export interface PendingChange {
  puts: Put[];
  photos?: NewPhotoBytes[];
  undoLabel?: string;
  definition?: { sha256: string; text: string };
  endsUndoOf?: Change['endsUndoOf'];
}
export type Saving = { now: 'saved' | 'saving' } | { now: 'notSaved'; problem: WriteProblem };

/** A change of a closed sheet, or the undo of one, until the person has said why there is to be a revision. */
interface Held {
  change: PendingChange | 'undo';
  done: (saved: boolean) => void;
}

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
  /** What the closed sheet holds back until `decide`: it is on the screen and in hand, and written nowhere. */
  readonly heldBack = signal<readonly (PendingChange | 'undo')[]>([]);
  readonly record = computed(() => ({
    ...foldRecord(this.packId, this.entries.value),
    newestAt: newestWritten(this.entries.value),
    sheetAt: newestWritten(this.entries.value.filter(({ key }) => isOfTheSheet(key))),
  }));
  readonly grading = computed(() => this.grade(this.record.value));
  private readonly grade: ReturnType<typeof gradeWhenChanged>;
  /** As last read or written. */
  private stored: Entry[];
  private waiting: PendingChange[] = [];
  private held: Held[] = [];
  /** Of the steps this session has written, oldest first: whether one left the sheet as it is. */
  private stepsAround: boolean[] = [];
  private running: Promise<void> | null = null;
  private isUndoing = false;
  /** Something else has written since the entries were read. */
  private isStale = false;

  constructor(
    readonly packId: string,
    readonly definition: LoadedDefinition,
    entries: Entry[],
    /** The definition it was graded by before it was carried over. */
    readonly earlier: LoadedDefinition | null = null,
  ) {
    this.stored = entries;
    this.entries.value = entries;
    this.grade = gradeWhenChanged(definition.definition);
  }

  /** The entries as last read or written. */
  get written(): readonly Entry[] {
    return this.stored;
  }

  /** Changes that are not written yet, oldest first. */
  get unsaved(): readonly PendingChange[] {
    return [...this.waiting, ...this.held.flatMap(({ change }) => (change === 'undo' ? [] : change))];
  }

  /**
   * Resolves when the change is written, or when it could not be (see `saving`). One that a closed sheet holds back
   * resolves when the person has decided: false if it was dropped.
   */
  async put(change: PendingChange): Promise<boolean> {
    const marked = { ...change, puts: this.withMarks(change.puts) };
    return isHeldBack(this.record.value.sheet, change.puts) ? this.holdBack(marked) : this.putAsItIs(marked);
  }

  /** Marked in the running take at the moment it was made: what is held back keeps its time in the film. */
  private withMarks(puts: Put[]): Put[] {
    const unsaved = this.unsaved.flatMap((change) => change.puts);
    return [...puts, ...unwrittenMarks(unsaved, puts), ...takeMarkPuts(this.record.value, puts, Date.now())];
  }

  private async putAsItIs(change: PendingChange): Promise<boolean> {
    holdUnshown(this);
    this.waiting.push(change);
    // At one stroke: nobody may take what is not written yet for saved.
    batch(() => {
      this.show();
      this.saving.value = { now: 'saving' };
      this.takenBack.value = null;
    });
    await this.flush();
    releaseUnshown(this);
    return !this.waiting.includes(change);
  }

  /** Writes a change now or not at all: what cannot be written is not shown and does not wait. Null, or why not. */
  async putNowOrNever(change: PendingChange): Promise<WriteProblem | null> {
    await this.flush();
    while (this.running !== null) await this.running;
    if (this.saving.value.now === 'notSaved') return this.saving.value.problem;
    let problem: WriteProblem | null = null;
    const work = async () => {
      this.saving.value = { now: 'saving' };
      problem = await this.write(change, this.recordWith([change]));
      this.show();
      await this.writeWaiting();
    };
    await this.run(work());
    return problem;
  }

  /** Tries again what is still waiting. */
  async flush(): Promise<void> {
    // Again where something was put while the last of it was just being called saved.
    do await (this.running ?? this.run(this.writeWaiting()));
    while (this.waiting.length > 0 && this.saving.value.now === 'saving');
  }

  /** One step, however quickly it is tapped again: the next is only known once this one is taken back. */
  async undo(): Promise<void> {
    if (this.isUndoing) return;
    this.isUndoing = true;
    try {
      await this.undoOnce();
    } finally {
      this.isUndoing = false;
    }
  }

  private async undoOnce(): Promise<void> {
    await this.flush();
    const saving = this.saving.value;
    // What the records refuse stays refused, and is no step of theirs: those that stand are taken back all the same.
    if (saving.now === 'saving' || (saving.now === 'notSaved' && saving.problem !== 'refused')) return;
    const leavesTheSheet = this.stepsAround.at(-1) === true;
    // Not waited for: it ends with a word of the person's.
    if (this.record.value.sheet.now === 'closed' && !leavesTheSheet) void this.holdBack('undo');
    else await this.takeStepBack([]);
  }

  /** What the person says of all that is held back: the reason of the next revision, or null to drop it. */
  async decide(reason: string | null): Promise<void> {
    const { held } = this;
    this.held = [];
    batch(() => {
      this.heldBack.value = [];
      this.show();
      this.saving.value = this.atRest();
    });
    for (const { change, done } of held) done(reason !== null && (await this.writeWithReason(change, reason)));
    releaseUnshown(this);
  }

  /** The first of them opens the sheet, in one transaction with it; the rest finds it open. */
  private async writeWithReason(change: PendingChange | 'undo', reason: string): Promise<boolean> {
    const opening = reopeningPuts(this.record.value, reason, Date.now());
    if (change !== 'undo') return this.putAsItIs({ ...change, puts: [...opening, ...change.puts] });
    return this.takeStepBack(opening);
  }

  private holdBack(change: PendingChange | 'undo'): Promise<boolean> {
    holdUnshown(this);
    return new Promise((done) => {
      this.held.push({ change, done });
      batch(() => {
        this.heldBack.value = this.held.map((one) => one.change);
        this.show();
        this.saving.value = this.atRest();
        this.takenBack.value = null;
      });
    });
  }

  private async takeStepBack(also: Put[]): Promise<boolean> {
    const cardOf = (entries: Entry[]) => this.cardOf(foldRecord(this.packId, entries));
    const result = await store().undo(this.packId, cardOf, also);
    if (!result.ok) {
      this.saving.value = { now: 'notSaved', problem: result.problem };
      return false;
    }
    this.stepsAround.pop();
    this.takenBack.value = this.undoLabel.value;
    await this.reload();
    return true;
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

  private run(work: Promise<void>): Promise<void> {
    const running = work.finally(() => {
      if (this.running === running) this.running = null;
    });
    this.running = running;
    return running;
  }

  private async writeWaiting(): Promise<void> {
    const refused = new Set<PendingChange>();
    let wrote = false;
    for (;;) {
      const change = nextPast(this.waiting, refused);
      if (change === undefined) {
        if (!this.isStale) break;
        await this.readAgain(wrote);
        wrote = false;
        continue;
      }
      this.saving.value = { now: 'saving' };
      const problem = await this.write(change, this.held.length === 0 ? this.record.value : this.recordWith([]));
      // What can never be written holds nothing else up.
      if (problem === 'refused' && !isMended(change, this.waiting)) refused.add(change);
      else if (problem !== null && problem !== 'refused') {
        this.saving.value = { now: 'notSaved', problem };
        return;
      } else {
        wrote ||= problem === null;
        this.waiting = this.waiting.filter((one) => one !== change);
        this.show();
      }
    }
    this.saving.value = refused.size > 0 ? { now: 'notSaved', problem: 'refused' } : this.atRest();
    void refreshBench();
  }

  /** One change in one transaction; null, or why it could not be written. */
  private async write(change: PendingChange, record: PackRecord): Promise<WriteProblem | null> {
    const { puts, photos, undoLabel, definition, endsUndoOf } = change;
    const result = await store().write({
      packId: this.packId,
      puts,
      card: this.cardOf(record),
      ...(photos && { photos }),
      ...(undoLabel !== undefined && { undoLabel }),
      ...(definition && { definition }),
      ...(endsUndoOf && { endsUndoOf }),
    });
    if (!result.ok) return result.problem;
    this.stored = withWritten(this.stored, result.entries);
    if (undoLabel !== undefined) {
      this.undoLabel.value = undoLabel;
      this.stepsAround.push(!puts.some(({ subject, part }) => isOfTheSheet([this.packId, subject, part])));
    }
    if (endsUndoOf !== undefined) {
      this.stepsAround = [];
      this.undoLabel.value = await store().undoLabel(this.packId);
    }
    return null;
  }

  /** `cardIsDue`: the card was written without what the other tab wrote at the same time. */
  private async readAgain(cardIsDue: boolean): Promise<void> {
    this.isStale = false;
    try {
      const entries = await store().entriesOf(this.packId);
      const undoLabel = await store().undoLabel(this.packId);
      this.stored = entries;
      batch(() => {
        this.show();
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

  private show(): void {
    this.entries.value = this.entriesWith(this.unsaved);
  }

  /** As it will be once what waits, and this, is written; without what is held back. */
  private recordWith(more: readonly PendingChange[]): PackRecord {
    return foldRecord(this.packId, this.entriesWith([...this.waiting, ...more]));
  }

  private entriesWith(changes: readonly PendingChange[]): Entry[] {
    return changes.reduce((all, { puts }) => provisionalEntries(this.packId, all, puts), this.stored);
  }

  private atRest(): Saving {
    return { now: this.held.length > 0 ? 'saving' : 'saved' };
  }
}

function withWritten(entries: readonly Entry[], written: readonly Entry[]): Entry[] {
  const keys = new Set(written.map(({ key }) => key.join('\n')));
  return [...entries.filter(({ key }) => !keys.has(key.join('\n'))), ...written];
}
