import { batch, type Signal, signal } from '@preact/signals';
import { guessSign } from '../../logs/guess-sign.ts';
import type { LayoutChoice } from '../../logs/log-layout.ts';
import type { LogMapping } from '../../logs/log-mapping.ts';
import type { LogPreview, LogSummary } from '../../logs/log-messages.ts';
import { oneByteText } from '../../logs/log-text.ts';
import type { RunEndHelp } from '../../logs/make-run.ts';
import { signIsOpen } from './changed-mapping.ts';
import { tickedAtFirst } from './found-run.ts';
import { type LogJob, type LogWorker, openLog } from './log-job.ts';

/** Enough to see a load come on and go; a few milliseconds on a phone. Our choice. */
const SIGN_BYTES = 1 << 20;

/** How a log was read, and what came of it. */
export interface LogRead {
  mapping: LogMapping;
  preview: LogPreview;
  summary: LogSummary;
}

export interface LogFile {
  logId: string;
  name: string;
  byteCount: number;
  /** Read again each time, so that the page does not hold them beside the worker; rejects if they are not there any more. */
  bytes(): Promise<ArrayBuffer>;
  /** As it was picked; null where its bytes come from this phone's own shelf. */
  picked: Blob | null;
}

/**
 * A log at hand: its bytes, the worker that reads them, and the last reading. Nothing of it is stored before it is kept.
 * A change reads the file anew; the reading before stays until the new one is there, and again if that is cancelled.
 */
export class LogInHand {
  readonly read = signal<LogRead | null>(null);
  /** Share done of a reading under way; null at rest. */
  readonly progress = signal<number | null>(0);
  readonly failed = signal(false);
  readonly ticked: Signal<ReadonlySet<number>> = signal(new Set<number>());
  private job: LogJob | null = null;
  /** The first bytes, from which the sign can be found without the worker. */
  private head = new Uint8Array(0);
  private turn = 0;
  private choice: LayoutChoice = {};

  constructor(
    readonly file: LogFile,
    private readonly help: RunEndHelp,
    kept: LogMapping | null = null,
  ) {
    void this.begin(kept);
  }

  /** Reads with another mapping. The sign is found again where what it was read from has changed. */
  change(mapping: LogMapping): Promise<void> {
    const before = this.read.value?.mapping;
    const next = before !== undefined && signIsOpen(before, mapping) ? this.withSignFound(mapping) : mapping;
    return this.readWith(async () => ({ mapping: next, preview: await this.working().preview(next) }));
  }

  /** Finds everything again around what has been set of the layout so far. */
  layOut(choice: LayoutChoice): Promise<void> {
    this.choice = { ...this.choice, ...choice };
    return this.readWith(() => this.working().guess(this.choice));
  }

  /** As if it had just been brought in. */
  findAnew(): Promise<void> {
    this.choice = {};
    return this.layOut({});
  }

  /** After a failure: with a new worker, the old one being past use. */
  retry(): void {
    this.job?.close();
    void this.begin(this.read.value?.mapping ?? null);
  }

  tick(place: number, on: boolean): void {
    const others = [...this.ticked.value].filter((other) => other !== place);
    this.ticked.value = new Set(on ? [...others, place] : others);
  }

  curve(place: number, mostPoints: number) {
    return this.working().curve(place, mostPoints);
  }

  /** Ends a reading under way and leaves what was read before. */
  cancel(): void {
    this.turn++;
    this.progress.value = null;
    this.job?.cancel();
  }

  close(): void {
    this.turn++;
    this.job?.close();
  }

  private begin(kept: LogMapping | null): Promise<void> {
    return this.readWith(async (turn) => {
      const bytes = await this.file.bytes();
      this.head = new Uint8Array(bytes.slice(0, SIGN_BYTES));
      // Put down meanwhile: no worker is to be started that nobody would end.
      if (turn !== this.turn) throw new Error('log: put down before it was opened');
      this.job = openLog(bytes, startMovingWorker);
      const opened = await this.job.opened;
      return kept === null ? opened : { mapping: kept, preview: await this.job.preview(kept) };
    });
  }

  private working(): LogJob {
    if (this.job === null) throw new Error('log: not opened yet');
    return this.job;
  }

  private async readWith(found: (turn: number) => Promise<Pick<LogRead, 'mapping' | 'preview'>>): Promise<void> {
    const turn = ++this.turn;
    this.progress.value = 0;
    this.failed.value = false;
    try {
      const { mapping, preview } = await found(turn);
      if (turn !== this.turn) return;
      const summary = await this.working().read(mapping, {
        help: this.help,
        onProgress: (doneFrac) => {
          if (turn === this.turn) this.progress.value = doneFrac;
        },
      });
      if (turn !== this.turn) return;
      batch(() => {
        this.read.value = { mapping, preview, summary };
        this.ticked.value = new Set(tickedAtFirst(summary.runs));
        this.progress.value = null;
      });
    } catch (error) {
      // A reading that was cancelled or overtaken has nothing to say any more.
      if (turn !== this.turn) return;
      console.warn('log: not read', error);
      this.progress.value = null;
      this.failed.value = true;
    }
  }

  private withSignFound(mapping: LogMapping): LogMapping {
    const { layout } = mapping;
    const text = this.head.subarray(layout.byteOrderMarkBytes);
    const { outIs, because } = guessSign(oneByteText(text, layout.encoding), mapping);
    return { ...mapping, outIs, signBecause: because };
  }
}

/** Bytes are moved to the worker, not copied: copying 60 MB would hold the screen up. */
function startMovingWorker(): LogWorker {
  const worker = new Worker(new URL('../workers/log-worker.ts', import.meta.url), { type: 'module' });
  const moving: LogWorker = {
    onmessage: null,
    onerror: null,
    postMessage: (message) => worker.postMessage(message, message.kind === 'open' ? [message.bytes] : []),
    terminate: () => worker.terminate(),
  };
  worker.onmessage = (event) => moving.onmessage?.(event);
  worker.onerror = (event) => moving.onerror?.(event);
  return moving;
}
