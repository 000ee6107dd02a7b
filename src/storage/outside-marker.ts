import type { BackupNote } from './store.ts';

/**
 * A note outside IndexedDB that a database exists, so that one the browser has thrown away is noticed. The device id
 * belongs to the database: a new one means a new database.
 */
export interface OutsideMarker {
  read(): string | null;
  write(text: string): void;
}

export interface MarkerNote {
  deviceId: string;
  packCount: number;
  at: string;
  /** Null where none was ever handed over; notes of earlier versions do not say. */
  lastBackup: BackupNote | null;
}

/** Null when there is no note, or none of ours. */
export function readMarker(marker: OutsideMarker): MarkerNote | null {
  const text = marker.read();
  if (text === null) return null;
  try {
    return markerNoteIn(JSON.parse(text));
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** By hand: the Bench needs nothing else of the schemas, and shows sooner without them. */
function markerNoteIn(note: unknown): MarkerNote | null {
  const { deviceId, packCount, at, lastBackup } = membersOf(note);
  if (typeof deviceId !== 'string' || !/^[0-9a-f]{32}$/.test(deviceId)) return null;
  if (typeof packCount !== 'number' || typeof at !== 'string') return null;
  return { deviceId, packCount, at, lastBackup: backupNoteIn(lastBackup) };
}

function backupNoteIn(note: unknown): BackupNote | null {
  const { fileName, packCount, at } = membersOf(note);
  const isNote = typeof fileName === 'string' && typeof packCount === 'number' && typeof at === 'string';
  return isNote && Number.isFinite(Date.parse(at)) ? { fileName, packCount, at } : null;
}

function membersOf(value: unknown): Partial<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Partial<Record<string, unknown>>) : {};
}

export function writeMarker(marker: OutsideMarker, note: MarkerNote): void {
  marker.write(JSON.stringify(note));
}

/** The marker in localStorage. Where that is refused (some private windows) there is no marker, and nothing is noticed. */
export function localStorageMarker(name: string): OutsideMarker {
  return {
    read: () => guarded(() => localStorage.getItem(name)),
    write: (text) => {
      guarded(() => localStorage.setItem(name, text));
    },
  };
}

function guarded<T>(action: () => T): T | null {
  try {
    return action();
  } catch (error) {
    // ReferenceError: no localStorage at all; DOMException: refused or full. The marker is a courtesy, never a need.
    if (error instanceof ReferenceError || error instanceof DOMException) return null;
    throw error;
  }
}
