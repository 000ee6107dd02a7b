import * as v from 'valibot';
import { randomIdSchema } from '../schema/text-limits.ts';

/**
 * A note outside IndexedDB that a database exists, so that one the browser has thrown away is noticed. The device id
 * belongs to the database: a new one means a new database.
 */
export interface OutsideMarker {
  read(): string | null;
  write(text: string): void;
}

const markerSchema = v.object({ deviceId: randomIdSchema, packCount: v.number(), at: v.string() });
export type MarkerNote = v.InferOutput<typeof markerSchema>;

/** Null when there is no note, or none of ours. */
export function readMarker(marker: OutsideMarker): MarkerNote | null {
  const text = marker.read();
  if (text === null) return null;
  try {
    const note: unknown = JSON.parse(text);
    return v.is(markerSchema, note) ? note : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
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
