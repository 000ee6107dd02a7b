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
}

/** Null when there is no note, or none of ours. */
export function readMarker(marker: OutsideMarker): MarkerNote | null {
  const text = marker.read();
  if (text === null) return null;
  try {
    const note: unknown = JSON.parse(text);
    return isMarkerNote(note) ? note : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** By hand: the Bench needs nothing else of the schemas, and shows sooner without them. */
function isMarkerNote(note: unknown): note is MarkerNote {
  if (typeof note !== 'object' || note === null) return false;
  const { deviceId, packCount, at } = note as Partial<Record<keyof MarkerNote, unknown>>;
  const isId = typeof deviceId === 'string' && /^[0-9a-f]{32}$/.test(deviceId);
  return isId && typeof packCount === 'number' && typeof at === 'string';
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
